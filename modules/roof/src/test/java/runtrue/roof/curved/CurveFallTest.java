package runtrue.roof.curved;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Geometry of the circle: a chord that subtends 2a stands r (1 - cos a) off its arc, and is flatter than p for 2 r p. */
class CurveFallTest {
    private static final double RADIUS = 30;

    private static CurveFall fall(Section section) {
        return CurveFall.of(new Curve(
                Vector3D.ZERO, Vector3D.Unit.MINUS_X, Vector3D.Unit.PLUS_Y.negate(), section, 0, 0, 0, 0, 0, 8));
    }

    /** From one angle to another off the level tangent, degrees. */
    private static Arc arc(boolean convex, double from, double to) {
        double start = Math.toRadians(from);
        double length = RADIUS * Math.toRadians(to - from);
        List<Double> stations =
                IntStream.rangeClosed(0, 8).mapToObj(i -> length * i / 8).toList();
        return new Arc(Vector2D.ZERO, RADIUS, convex, start, length, stations);
    }

    private static Folds folds(double... heights) {
        return new Folds(IntStream.range(0, heights.length)
                .mapToObj(i -> Vector2D.of(2 * i, heights[i]))
                .toList());
    }

    @ParameterizedTest
    @CsvSource({"-16, 16, 16", "-16, 10, 10", "-16, 0, 16", "5, 20, 20", "-20, -3, 20"})
    void a_barrel_drains_at_its_ends(double from, double to, double expected) {
        assertThat(Math.toDegrees(fall(arc(true, from, to)).eavePitch().orElseThrow()))
                .isCloseTo(expected, within(1e-9));
        assertThat(fall(arc(true, from, to)).sag()).isZero();
    }

    @Test
    void a_hanging_roof_drains_nowhere_and_holds_water_to_its_lower_end() {
        CurveFall fall = fall(arc(false, -10, 6));
        assertThat(fall.eavePitch()).isEmpty();
        assertThat(fall.sag()).isCloseTo(RADIUS * (1 - Math.cos(Math.toRadians(6))), within(1e-9));
    }

    @Test
    void a_hanging_roof_that_falls_one_way_throughout_holds_none() {
        CurveFall fall = fall(arc(false, 3, 20));
        assertThat(fall.sag()).isZero();
        assertThat(Math.toDegrees(fall.eavePitch().orElseThrow())).isCloseTo(3, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"-16, 16, 4", "-16, 1, 3", "-1, 0.5, 1.5", "3, 16, 0"})
    void the_flat_stretch_lies_about_the_crown_and_within_the_arc(double from, double to, double degrees) {
        assertThat(fall(arc(true, from, to)).flatterThan(Math.toRadians(2)))
                .isCloseTo(RADIUS * Math.toRadians(degrees), within(1e-9));
    }

    @Test
    void a_section_of_facets_is_measured_from_fold_to_fold() {
        CurveFall fall = fall(folds(0, 0.5, 0.53, 0.53, 0.2));
        assertThat(fall.flatterThan(Math.toRadians(2))).isCloseTo(Math.hypot(2, 0.03) + 2, within(1e-9));
        assertThat(Math.toDegrees(fall.eavePitch().orElseThrow()))
                .isCloseTo(Math.toDegrees(Math.atan(0.33 / 2)), within(1e-9));
        assertThat(fall.sag()).isZero();
    }

    @Test
    void a_hollow_between_two_crowns_holds_water_to_the_lower_of_them() {
        assertThat(fall(folds(0, 0.5, 0.3, 0.42, 0.1)).sag()).isCloseTo(0.12, within(1e-9));
    }
}
