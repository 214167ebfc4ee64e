package runtrue.shape.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Fineness;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.Ring;

class ExtrusionTest {
    private static final Profile RECTANGLE = Bodies.profile(0, 0, 3, 0, 3, 2, 0, 2);

    @Test
    void a_right_prism_has_base_times_height() {
        Solid solid = Extrusion.of(RECTANGLE, AffineTransformMatrix3D.identity(), Vector3D.of(0, 0, 0.5));
        assertThat(solid.mesh().volume()).isEqualTo(3.0, within(1e-12));
        assertThat(solid.mesh().area()).isEqualTo(2 * 6 + 10 * 0.5, within(1e-12));
        assertThat(solid.mesh().faces()).hasDimensions(6, 1);
    }

    @Test
    void an_oblique_prism_has_base_times_rise_by_cavalieri() {
        Solid solid = Extrusion.of(RECTANGLE, AffineTransformMatrix3D.identity(), Vector3D.of(4, 1, 0.5));
        assertThat(solid.mesh().volume()).isEqualTo(3.0, within(1e-12));
        assertThat(solid.sweep()).hasValueSatisfying(sweep -> {
            assertThat(sweep.path().eq(Vector3D.of(4, 1, 0.5), precision())).isTrue();
            assertThat(sweep.section()).hasSize(4);
        });
    }

    @ParameterizedTest
    @CsvSource({
        "1, 1, 1, 1",
        "1, 1, 1, -1",
        "-1, 1, 1, 1",
        "-1, 1, 1, -1",
        "-1, -1, -1, 1",
        "2, 0.5, 3, 1",
        "-2, 0.5, 3, -1"
    })
    void normals_stay_outward_when_the_placement_mirrors_or_the_sweep_runs_down(
            double sx, double sy, double sz, double depth) {
        AffineTransformMatrix3D scale = AffineTransformMatrix3D.createScale(sx, sy, sz);
        Solid solid = Extrusion.of(RECTANGLE, scale, Vector3D.of(0.3, 0, depth));
        assertThat(solid.mesh().volume()).isEqualTo(6 * Math.abs(sx * sy * sz * depth), within(1e-9));
    }

    @Test
    void a_hollow_box_is_the_outer_less_the_inner() {
        Profile hollow = new Profile(
                "RHS",
                Ring.of(new double[] {0, 0, 0.2, 0, 0.2, 0.1, 0, 0.1}, 0),
                List.of(Ring.of(new double[] {0.01, 0.01, 0.19, 0.01, 0.19, 0.09, 0.01, 0.09}, 0)));
        Solid solid = Extrusion.of(hollow, AffineTransformMatrix3D.identity(), Vector3D.of(0, 0, 6));
        assertThat(solid.mesh().volume()).isEqualTo((0.2 * 0.1 - 0.18 * 0.08) * 6, within(1e-12));
        assertThat(solid.mesh().faces()[0]).hasDimensions(2, 4);
    }

    /**
     * A regular polygon of n sides in a circle has the area n/2 r2 sin(2 pi / n): what it lacks of pi r2 is at most the
     * stated share, and its sides are at most the chord tolerance off the circle.
     */
    @ParameterizedTest
    @CsvSource({"0.001, 28", "0.0127, 28", "0.05, 28", "0.25, 28", "0.5, 36", "5, 112", "50, 352"})
    void a_cylinder_lacks_the_area_of_its_polygon_and_no_more(double radius, int sides) {
        Profile circle =
                Profile.circle("pipe", radius, Fineness.of(Bodies.TOLERANCES.chord(), 0, Bodies.TOLERANCES.round()));
        double volume = Extrusion.of(circle, AffineTransformMatrix3D.identity(), Vector3D.of(0, 0, 2))
                .mesh()
                .volume();
        double polygon = 0.5 * sides * radius * radius * Math.sin(2 * Math.PI / sides);
        assertThat(circle.outer().size()).isEqualTo(sides);
        assertThat(volume).isCloseTo(2 * polygon, withinPercentage(1e-9));
        assertThat(1 - polygon / (Math.PI * radius * radius)).isLessThan(Bodies.TOLERANCES.round());
        assertThat(radius * (1 - Math.cos(Math.PI / sides))).isLessThan(Bodies.TOLERANCES.chord());
    }

    @Test
    void a_sweep_within_its_own_plane_is_refused() {
        assertThatThrownBy(() -> Extrusion.of(RECTANGLE, AffineTransformMatrix3D.identity(), Vector3D.of(1, 0, 0)))
                .isInstanceOf(ShapeException.class)
                .hasMessageContaining("within the plane of its profile");
    }

    private static org.apache.commons.numbers.core.Precision.DoubleEquivalence precision() {
        return org.apache.commons.numbers.core.Precision.doubleEquivalenceOfEpsilon(1e-12);
    }
}
