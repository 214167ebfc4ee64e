package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Two level slabs, half a metre apart: how much of the lower one is roof. Areas worked by hand. */
class StackedRoofsTest {
    private static final ReadElement LOWER = level("lower", 0, 0, 40, 25, 5);

    private static ReadElement level(String id, double x0, double y0, double x1, double y1, double z) {
        return slab(id, 0.1, p(x0, y0, z), p(x1, y0, z), p(x1, y1, z), p(x0, y1, z));
    }

    private static List<Double> areas(ReadElement... slabs) {
        return Roofs.layOut(List.of(slabs), List.of(), settings(0.5)).planes().stream()
                .map(l -> Math.rint(l.plane().area() * 1e4) / 1e4)
                .sorted()
                .toList();
    }

    @Test
    void a_wide_part_left_of_a_mostly_covered_roof_stays_a_plane() {
        assertThat(areas(LOWER, level("upper", 0, 0, 28.4, 25, 5.5))).containsExactly(290.0, 710.0);
    }

    @Test
    void a_rim_left_all_round_a_covered_layer_is_its_edge() {
        ReadElement upper = level("upper", 0.5, 0.5, 39.5, 24.5, 5.5);

        assertThat(areas(LOWER, upper)).containsExactly(39.0 * 24);
        assertThat(Roofs.layOut(List.of(LOWER, upper), List.of(), settings(0.5)).unplaced())
                .extracting(u -> u.element().element().globalId())
                .containsExactly("lower");
    }

    @Test
    void a_wide_part_loses_the_rim_that_hangs_on_it() {
        Roof roof = Roofs.layOut(List.of(LOWER, level("upper", 0, 0.4, 30, 24.6, 5.5)), List.of(), settings(0.5));

        assertThat(roof.planes())
                .extracting(l -> l.plane().area())
                .anySatisfy(area -> assertThat(area).isCloseTo(10 * 25, within(1e-3)))
                .anySatisfy(area -> assertThat(area).isCloseTo(30 * 24.2, within(1e-3)))
                .hasSize(2);
    }
}
