package runtrue.wind.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Polygon;
import runtrue.wind.TestRoofs;
import runtrue.wind.WindException;

class RoofFormsTest {
    static Stream<WindRoof> simpleRoofs() {
        return Stream.of(
                TestRoofs.flat(TestRoofs.rectangle(30, 20), 5, EavesDetail.sharp()),
                TestRoofs.mono(30, 20, 5, 10),
                TestRoofs.duo(30, 20, 5, 7, 10),
                TestRoofs.duo(30, 20, 5, 5.5, 3),
                TestRoofs.troughed(30, 20, 5, 10),
                TestRoofs.hipped(30, 20, 5, 7, 10));
    }

    @ParameterizedTest
    @MethodSource("simpleRoofs")
    void a_simple_roof_is_told_by_its_planes(WindRoof roof) {
        boolean low = roof.slopes().stream().allMatch(s -> s.pitchDegrees() < 5);

        assertThat(RoofForms.of(roof.outline(), roof.slopes())).contains(low ? RoofForm.FLAT : roof.form());
    }

    private static WindSlope strip(String id, double from, double to, double fall) {
        Polygon plan = TestRoofs.polygon(0, from, 30, from, 30, to, 0, to);
        return new WindSlope(id, plan, 0, fall, Math.toRadians(10));
    }

    @Test
    void several_spans_side_by_side_have_no_form() {
        List<WindSlope> slopes =
                List.of(strip("A", 0, 5, -1), strip("B", 5, 10, 1), strip("C", 10, 15, -1), strip("D", 15, 20, 1));

        assertThat(RoofForms.of(TestRoofs.rectangle(30, 20), slopes)).isEmpty();
    }

    @Test
    void steps_that_fall_the_same_way_have_no_form() {
        List<WindSlope> slopes = List.of(strip("A", 0, 10, -1), strip("B", 10, 20, -1));

        assertThat(RoofForms.of(TestRoofs.rectangle(30, 20), slopes)).isEmpty();
    }

    @Test
    void a_gable_with_a_crossing_wing_has_no_form() {
        Polygon outline = TestRoofs.polygon(0, 0, 40, 0, 40, 10, 25, 10, 25, 20, 15, 20, 15, 10, 0, 10);
        List<WindSlope> slopes = List.of(
                strip("A", 0, 5, -1),
                strip("B", 5, 10, 1),
                new WindSlope("C", TestRoofs.polygon(15, 10, 20, 10, 20, 20, 15, 20), -1, 0, 0.2),
                new WindSlope("D", TestRoofs.polygon(20, 10, 25, 10, 25, 20, 20, 20), 1, 0, 0.2));

        assertThat(RoofForms.of(outline, slopes)).isEmpty();
    }

    @Test
    void a_pitched_plane_is_no_flat_roof() {
        WindSlope steep = strip("A", 0, 20, -1);

        assertThatThrownBy(() -> new WindRoof(
                        "R", TestRoofs.rectangle(30, 20), RoofForm.FLAT, List.of(steep), 5, 7, EavesDetail.sharp()))
                .isInstanceOf(WindException.class)
                .hasMessageContaining("plane A falls more than 5 degrees");
    }
}
