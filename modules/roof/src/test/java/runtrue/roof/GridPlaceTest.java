package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static runtrue.roof.RoofFixtures.p;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.GridAxis;

class GridPlaceTest {
    private static List<GridAxis> grid() {
        List<GridAxis> axes = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            axes.add(new GridAxis("g", String.valueOf((char) ('A' + i)), List.of(p(6 * i, -1, 0), p(6 * i, 30, 0))));
            axes.add(new GridAxis("g", String.valueOf(i + 8), List.of(p(-1, 10 * i, 0), p(30, 10 * i, 0))));
        }
        return axes;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "8|15|between B and C, between 9 and 10",
                "6.1|15|on B, between 9 and 10",
                "-5|25|beyond A, between 10 and 11",
                "19|31|beyond D, beyond 11"
            })
    void a_point_is_told_by_the_lines_around_it(double x, double y, String place) {
        assertThat(GridPlace.of(grid(), p(x, y, 5))).isEqualTo(place);
    }

    @Test
    void without_a_grid_nothing_is_said() {
        assertThat(GridPlace.of(List.of(), p(1, 2, 3))).isEmpty();
    }
}
