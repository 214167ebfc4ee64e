package runtrue.shape.curve.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Fineness;

class SpiralTest {
    private static final Fineness FINE = Fineness.of(2e-3, 1e-7, 0.01);

    private static Spiral clothoid(double a, double length) {
        return new Spiral(List.of(0.0, 1 / (a * a)), 0, length);
    }

    /**
     * The series of the Fresnel integrals as handbooks of setting out write them, t = L / 2R the angle at the end:
     * x = L (1 - t^2 / 10 + t^4 / 216 - t^6 / 9360 ...), y = L (t / 3 - t^3 / 42 + t^5 / 1320 - t^7 / 75600 ...).
     */
    @ParameterizedTest
    @CsvSource({"100, 50", "100, 100", "60, 60", "250, 10"})
    void a_clothoid_ends_where_the_series_of_handbooks_ends(double a, double length) {
        double radius = a * a / length;
        double t = length / (2 * radius);
        double x = length
                * (1 - Math.pow(t, 2) / 10 + Math.pow(t, 4) / 216 - Math.pow(t, 6) / 9360 + Math.pow(t, 8) / 685440);
        double y = length
                * (t / 3
                        - Math.pow(t, 3) / 42
                        + Math.pow(t, 5) / 1320
                        - Math.pow(t, 7) / 75600
                        + Math.pow(t, 9) / 6894720);

        Spiral clothoid = clothoid(a, length);

        assertThat(clothoid.at(length).distance(Vector3D.of(x, y, 0))).isLessThan(1e-9 * length);
        assertThat(clothoid.heading(length)).isCloseTo(t, within(1e-15));
    }

    /** Abramowitz and Stegun, Handbook of Mathematical Functions, table 7.7: C(1) = 0.7798934, S(1) = 0.4382591. */
    @Test
    void a_clothoid_of_unit_parameter_has_the_tabulated_fresnel_integrals() {
        Spiral unit = new Spiral(List.of(0.0, Math.PI), 0, 1);
        assertThat(unit.at(1).getX()).isCloseTo(0.7798934, within(5e-8));
        assertThat(unit.at(1).getY()).isCloseTo(0.4382591, within(5e-8));
    }

    @Test
    void a_constant_curvature_makes_a_circle() {
        Spiral circle = new Spiral(List.of(1 / 7.0), 0, 40);
        for (double s : new double[] {-11, 3, 25, 40}) {
            Vector3D expected = Vector3D.of(7 * Math.sin(s / 7), 7 - 7 * Math.cos(s / 7), 0);
            assertThat(circle.at(s).distance(expected)).isLessThan(1e-11);
        }
    }

    @Test
    void chords_keep_the_tolerance_where_it_is_sharpest() {
        Spiral clothoid = clothoid(60, 90);
        double[] s = clothoid.stations(0, 90, FINE);
        for (int i = 1; i < s.length; i++) {
            Vector3D a = clothoid.at(s[i - 1]);
            Vector3D b = clothoid.at(s[i]);
            Vector3D middle = clothoid.at(0.5 * (s[i - 1] + s[i]));
            assertThat(middle.distance(a.add(b).multiply(0.5))).isLessThan(2e-3);
        }
    }

    @Test
    void the_nearest_point_is_found_along_its_normal() {
        Spiral clothoid = clothoid(60, 90);
        double heading = clothoid.heading(37.5);
        Vector3D beside = clothoid.at(37.5).add(Vector3D.of(-Math.sin(heading), Math.cos(heading), 0));
        assertThat(clothoid.nearest(beside)).isCloseTo(37.5, within(1e-5));
    }

    @Test
    void a_spiral_that_turns_without_end_is_refused() {
        assertThatThrownBy(() -> clothoid(0.001, 90)).isInstanceOf(ShapeException.class);
    }
}
