package runtrue.shape.curve.alignment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import runtrue.shape.curve.BSpline;

class PolynomialTest {
    private static final Polynomial PARABOLA =
            new Polynomial(List.of(Vector3D.of(1, 2, 0), Vector3D.of(1, 0.5, 0), Vector3D.of(0, 0.25, 0)));

    @Test
    void a_part_in_bernsteins_form_is_the_same_polynomial() {
        BSpline part = PARABOLA.between(-1, 3);
        for (int i = 0; i <= 8; i++) {
            double u = -1 + i / 2.0;
            Vector3D expected = Vector3D.of(1 + u, 2 + 0.5 * u + 0.25 * u * u, 0);
            assertThat(part.at(i / 8.0).distance(expected)).isLessThan(1e-12);
        }
    }

    /** Length of y = x^2 / 2 from its vertex: (x sqrt(1 + x^2) + asinh x) / 2. */
    @Test
    void lengths_of_a_parabola_are_those_of_the_formula_and_lead_back() {
        Polynomial standing = new Polynomial(List.of(Vector3D.ZERO, Vector3D.of(1, 0, 0), Vector3D.of(0, 0.5, 0)));
        for (double x : new double[] {0.1, 1, 2.5, -1.5}) {
            double asinh = Math.log(x + Math.hypot(x, 1));
            double length = 0.5 * (x * Math.hypot(x, 1) + asinh);
            assertThat(standing.length(x)).isCloseTo(length, within(1e-8));
            assertThat(standing.atLength(length)).isCloseTo(x, within(1e-8));
        }
    }
}
