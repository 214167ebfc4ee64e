package runtrue.shape.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import runtrue.shape.ShapeException;

class BSplineTest {
    private static final Fineness FINE = Fineness.of(2e-3, 1e-7, 0.01);

    private static double[] ones(int n) {
        double[] ones = new double[n];
        Arrays.fill(ones, 1);
        return ones;
    }

    /**
     * A quarter circle as one rational quadratic arc with the middle weight cos 45 degrees: the example that Piegl and
     * Tiller, The NURBS Book, open the chapter on conics with (from memory).
     */
    private static BSpline quarter(double radius) {
        return new BSpline(
                2,
                new double[] {0, 0, 0, 1, 1, 1},
                List.of(Vector3D.of(radius, 0, 0), Vector3D.of(radius, radius, 0), Vector3D.of(0, radius, 0)),
                new double[] {1, Math.sqrt(0.5), 1});
    }

    @Test
    void a_rational_quadratic_quarter_circle_is_a_circle() {
        BSpline quarter = quarter(7);
        for (double t = 0; t <= 1; t += 1.0 / 64) {
            Vector3D point = quarter.at(t);
            assertThat(point.norm()).isEqualTo(7, within(1e-12));
            assertThat(point.dot(quarter.tangent(t))).isEqualTo(0, within(1e-12));
        }
        assertThat(quarter.at(0.5).getX()).isEqualTo(7 * Math.sqrt(0.5), within(1e-12));
    }

    @Test
    void a_circle_of_four_quarters_has_no_corners_but_four_parts_with_all_points_on_it() {
        double w = Math.sqrt(0.5);
        List<Vector3D> square = new ArrayList<>();
        int[][] corners = {{1, 0}, {1, 1}, {0, 1}, {-1, 1}, {-1, 0}, {-1, -1}, {0, -1}, {1, -1}, {1, 0}};
        for (int[] c : corners) {
            square.add(Vector3D.of(5 * c[0], 5 * c[1], 2));
        }
        BSpline circle = new BSpline(
                2, new double[] {0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4}, square, new double[] {1, w, 1, w, 1, w, 1, w, 1});
        List<BSpline> parts = circle.smoothParts();
        assertThat(parts).hasSize(4);
        for (BSpline part : parts) {
            for (int i = 0; i <= 8; i++) {
                double t = part.start() + (part.end() - part.start()) * i / 8;
                assertThat(part.at(t).distance(circle.at(t))).isLessThan(1e-12);
                assertThat(Math.hypot(part.at(t).getX(), part.at(t).getY())).isEqualTo(5, within(1e-12));
            }
        }
        assertThat(circle.period()).isEqualTo(4);
    }

    /** With no inner knots the basis is Bernstein's: sum of C(3,i) t^i (1-t)^(3-i) P_i. */
    @Property(tries = 100)
    void a_clamped_cubic_without_inner_knots_is_a_bezier_curve(@ForAll long seed) {
        Random random = new Random(seed);
        List<Vector3D> p = points(random, 4);
        BSpline spline = new BSpline(3, new double[] {0, 0, 0, 0, 1, 1, 1, 1}, p, ones(4));
        double t = random.nextDouble();
        double s = 1 - t;
        Vector3D bezier = Vector3D.Sum.create()
                .addScaled(s * s * s, p.get(0))
                .addScaled(3 * s * s * t, p.get(1))
                .addScaled(3 * s * t * t, p.get(2))
                .addScaled(t * t * t, p.get(3))
                .get();
        assertThat(spline.at(t).distance(bezier)).isLessThan(1e-12);
        Vector3D slope = p.get(1).subtract(p.get(0)).multiply(3);
        assertThat(spline.tangent(0).distance(slope)).isLessThan(1e-11);
    }

    /** A uniform quadratic B-spline passes the middle of each leg of its control polygon, along the leg (de Boor). */
    @Test
    void an_unclamped_quadratic_touches_the_middles_of_its_control_polygon() {
        List<Vector3D> p = points(new Random(3), 6);
        BSpline spline = new BSpline(2, new double[] {0, 1, 2, 3, 4, 5, 6, 7, 8}, p, ones(6));
        assertThat(spline.start()).isEqualTo(2);
        assertThat(spline.end()).isEqualTo(6);
        for (int i = 0; i < 5; i++) {
            Vector3D middle = p.get(i).add(p.get(i + 1)).multiply(0.5);
            assertThat(spline.at(2 + i).distance(middle)).isLessThan(1e-12);
            assertThat(spline.tangent(2 + i).angle(p.get(i + 1).subtract(p.get(i))))
                    .isLessThan(1e-7);
        }
    }

    @Property(tries = 600)
    void chords_keep_the_tolerance_everywhere(@ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int degree) {
        Random random = new Random(seed);
        int n = degree + 1 + random.nextInt(8);
        List<Vector3D> p = points(random, n);
        double[] knots = new double[n + degree + 1];
        for (int i = 1; i < knots.length; i++) {
            boolean clamped = i <= degree || i > n;
            knots[i] = knots[i - 1] + (clamped ? 0 : 0.2 + random.nextDouble());
        }
        double[] weights = random.doubles(n, 0.4, 2.5).toArray();
        BSpline spline = new BSpline(degree, knots, p, weights);
        double[] t = spline.stations(spline.start(), spline.end(), FINE);
        for (int i = 1; i < t.length; i++) {
            Vector3D a = spline.at(t[i - 1]);
            Vector3D chord = spline.at(t[i]).subtract(a);
            for (int k = 1; k < 20; k++) {
                Vector3D off = spline.at(t[i - 1] + (t[i] - t[i - 1]) * k / 20).subtract(a);
                double distance = chord.norm() > 0 ? off.cross(chord).norm() / chord.norm() : off.norm();
                assertThat(distance).isLessThan(2e-3 + 1e-9);
            }
        }
    }

    @Property(tries = 60)
    void the_nearest_parameter_of_a_point_on_it_is_its_own(@ForAll long seed) {
        Random random = new Random(seed);
        BSpline spline = new BSpline(
                3,
                new double[] {0, 0, 0, 0, 1, 2, 4, 4, 4, 4},
                points(random, 6),
                random.doubles(6, 0.5, 2).toArray());
        double t = 4 * random.nextDouble();
        Vector3D on = spline.at(t);
        assertThat(spline.at(spline.nearest(on)).distance(on)).isLessThan(1e-6);
    }

    @Test
    void a_knot_that_counts_as_often_as_the_degree_is_a_corner() {
        List<Vector3D> p = List.of(
                Vector3D.ZERO, Vector3D.of(1, 0, 0), Vector3D.of(2, 0, 0), Vector3D.of(2, 1, 0), Vector3D.of(2, 2, 0));
        BSpline spline = new BSpline(2, new double[] {0, 0, 0, 1, 1, 2, 2, 2}, p, ones(5));
        List<BSpline> parts = spline.smoothParts();
        assertThat(parts).hasSize(2);
        assertThat(parts.get(0).tangent(1).normalize()).isEqualTo(Vector3D.Unit.PLUS_X);
        assertThat(parts.get(1).tangent(1).normalize()).isEqualTo(Vector3D.Unit.PLUS_Y);
    }

    @Test
    void what_makes_no_curve_is_refused() {
        List<Vector3D> p = points(new Random(1), 4);
        assertThatThrownBy(() -> new BSpline(3, new double[] {0, 0, 0, 0, 1, 1, 1}, p, ones(4)))
                .isInstanceOf(ShapeException.class)
                .hasMessageContaining("7 knots for 4 control points");
        assertThatThrownBy(() -> new BSpline(4, new double[9], p, ones(4))).hasMessageContaining("degree 4");
        assertThatThrownBy(() -> new BSpline(3, new double[8], p, ones(4))).hasMessageContaining("span nothing");
        assertThatThrownBy(() -> new BSpline(99, new double[8], p, ones(4))).hasMessageContaining("degree 99");
        assertThatThrownBy(() -> new BSpline(3, new double[] {0, 0, 0, 0, 1, 1, 1, 1}, p, new double[] {1, 0, 1, 1}))
                .hasMessageContaining("weight");
    }

    private static List<Vector3D> points(Random random, int n) {
        List<Vector3D> points = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            points.add(Vector3D.of(10 * random.nextDouble(), 10 * random.nextDouble(), 10 * random.nextDouble()));
        }
        return points;
    }
}
