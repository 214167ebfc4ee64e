package runtrue.shape.bool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.shape.bool.Combination.Kind;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.solid.Bodies;

class CombinationTest {
    private final List<String> remarks = new ArrayList<>();

    private Mesh combine(Kind kind, Mesh a, Mesh b) {
        return Combination.of(kind, a, b, Bodies.TOLERANCES, remarks::add);
    }

    @ParameterizedTest
    @CsvSource({
        "through, 1, 1, -1, 2, 2, 2, 15, 1, 18",
        "pocket, 1, 1, 0.5, 2, 2, 2, 15.5, 0.5, 17",
        "cavity, 1, 1, 0.25, 2, 2, 0.75, 15.5, 0.5, 16",
        "notch at an edge, -1, 1, -1, 1, 2, 2, 15, 1, 21",
        "flush with an edge, 0, 1, -1, 1, 2, 2, 15, 1, 18",
        "flush with the top, 1, 1, 0.5, 2, 2, 1, 15.5, 0.5, 16",
        "corner, -1, -1, -1, 1, 1, 2, 15, 1, 27",
        "strip across, 1, -1, -1, 2, 5, 2, 12, 4, 30",
        "same body, 0, 0, 0, 4, 4, 1, 0, 16, 16",
        "touching beside, 4, 0, 0, 5, 4, 1, 16, 0, 20",
        "touching on top, 1, 1, 1, 2, 2, 2, 16, 0, 17",
        "apart, 9, 9, 9, 10, 10, 10, 16, 0, 17",
        "around, -1, -1, -1, 5, 5, 2, 0, 16, 108"
    })
    void boxes_combine_to_their_known_volumes(
            String how,
            double x0,
            double y0,
            double z0,
            double x1,
            double y1,
            double z1,
            double difference,
            double common,
            double union) {
        Mesh slab = Bodies.box(0, 0, 0, 4, 4, 1);
        Mesh tool = Bodies.box(x0, y0, z0, x1, y1, z1);
        check(combine(Kind.DIFFERENCE, slab, tool), difference, how + " less");
        check(combine(Kind.INTERSECTION, slab, tool), common, how + " common");
        check(combine(Kind.UNION, slab, tool), union, how + " union");
        assertThat(remarks).isEmpty();
    }

    private static void check(Mesh mesh, double volume, String how) {
        assertThat(mesh.volume()).as(how).isEqualTo(volume, within(1e-9));
        if (volume > 0) {
            assertThat(mesh.closed()).as(how).isTrue();
        }
    }

    @Property(tries = 40)
    void a_slab_with_through_openings_loses_their_area_times_its_thickness(
            @ForAll @IntRange(min = 1, max = 12) int openings,
            @ForAll @DoubleRange(min = 0, max = 3) double turn,
            @ForAll @DoubleRange(min = 0, max = 1) double pitch) {
        double thickness = 0.2;
        AffineTransformMatrix3D placed = AffineTransformMatrix3D.from(
                        QuaternionRotation.fromAxisAngle(Vector3D.of(1, 0.2, turn), pitch))
                .translate(12, -7, 3);
        Mesh slab = Bodies.box(0, 0, 0, 30, 8, thickness).transformed(placed);
        for (int i = 0; i < openings; i++) {
            double x = 1 + 2.3 * i;
            slab = combine(
                    Kind.DIFFERENCE, slab, Bodies.box(x, 2, -1, x + 1.2, 4.5, 1).transformed(placed));
        }
        assertThat(slab.closed()).isTrue();
        assertThat(slab.volume()).isEqualTo((30 * 8 - openings * 1.2 * 2.5) * thickness, within(1e-7));
        assertThat(slab.faces()).hasNumberOfRows(6 + 4 * openings);
    }

    @Property(tries = 150)
    void difference_and_common_part_add_up_to_the_first_solid(
            @ForAll @IntRange(min = 3, max = 9) int sides,
            @ForAll @DoubleRange(min = -2, max = 2) double x,
            @ForAll @DoubleRange(min = -2, max = 2) double z,
            @ForAll @DoubleRange(min = 0.1, max = 3) double angle) {
        Mesh a = Bodies.prism(0, 2, 0, 0, 5, 0, 5, 4, 3, 4, 3, 1, 2, 1, 2, 4, 0, 4);
        Mesh b = Bodies.prism(-2, 2, PlaneCutTest.ngon(sides, 1.5))
                .transformed(
                        AffineTransformMatrix3D.from(QuaternionRotation.fromAxisAngle(Vector3D.of(1, 2, 0.5), angle))
                                .translate(2 + x, 2, z));
        Mesh difference = combine(Kind.DIFFERENCE, a, b);
        Mesh common = combine(Kind.INTERSECTION, a, b);
        Mesh union = combine(Kind.UNION, a, b);
        assertThat(remarks).isEmpty();
        // Corners nearer than 10 micrometres become one, which may move the faces of the second solid by as much.
        double welded = 1e-5 * b.area();
        assertThat(difference.volume() + common.volume()).isEqualTo(a.volume(), within(welded));
        assertThat(union.volume() + common.volume()).isEqualTo(a.volume() + b.volume(), within(welded));
    }

    @Property(tries = 50)
    void volumes_agree_with_binary_space_partitioning(
            @ForAll @IntRange(min = 3, max = 8) int sides,
            @ForAll @DoubleRange(min = -2, max = 2) double x,
            @ForAll @DoubleRange(min = 0.1, max = 3) double angle) {
        Mesh a = Bodies.prism(0, 2, 0, 0, 5, 0, 5, 4, 0, 4);
        Mesh b = Bodies.prism(-2, 2, PlaneCutTest.ngon(sides, 1.5))
                .transformed(
                        AffineTransformMatrix3D.from(QuaternionRotation.fromAxisAngle(Vector3D.of(1, 2, 0.5), angle))
                                .translate(2 + x, 2, 1));
        assertThat(combine(Kind.DIFFERENCE, a, b).volume()).isEqualTo(Partitions.difference(a, b), within(1e-6));
    }
}
