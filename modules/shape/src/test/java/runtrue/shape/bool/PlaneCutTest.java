package runtrue.shape.bool;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.shape.mesh.FacePlane;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.solid.Bodies;

class PlaneCutTest {
    private static final double POINT = Bodies.TOLERANCES.point();

    private static FacePlane plane(double nx, double ny, double nz, double x, double y, double z) {
        double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
        return new FacePlane(nx / length, ny / length, nz / length, (nx * x + ny * y + nz * z) / length);
    }

    @Test
    void a_corner_cut_off_a_cube_is_a_tetrahedron() {
        Mesh corner = PlaneCut.keptPart(Bodies.box(0, 0, 0, 2, 2, 2), plane(-1, -1, -1, 1, 0, 0), POINT);
        assertThat(corner.closed()).isTrue();
        assertThat(corner.faces()).hasNumberOfRows(4);
        assertThat(corner.volume()).isEqualTo(1.0 / 6, within(1e-12));
    }

    /** Frustum: h/3 (A1 + A2 + sqrt(A1 A2)); a square of side 4 battered on four sides to a square of side 2 in height 3. */
    @Test
    void a_block_battered_on_four_sides_is_a_frustum() {
        Mesh mesh = Bodies.box(-2, -2, 0, 2, 2, 3);
        for (int[] side : new int[][] {{1, 0}, {-1, 0}, {0, 1}, {0, -1}}) {
            mesh = PlaneCut.keptPart(mesh, plane(-3 * side[0], -3 * side[1], -1, 2 * side[0], 2 * side[1], 0), POINT);
        }
        assertThat(mesh.closed()).isTrue();
        assertThat(mesh.faces()).hasNumberOfRows(6);
        assertThat(mesh.volume()).isEqualTo(16 + 4 + 8, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 8", "0, -1, 0", "2, 1, 0", "2, -1, 8", "-1, 1, 8", "3, -1, 8", "1, 1, 4"})
    void a_plane_in_a_face_keeps_all_or_nothing(double z, double up, double volume) {
        Mesh kept = PlaneCut.keptPart(Bodies.box(0, 0, 0, 2, 2, 2), plane(0, 0, up, 0, 0, z), POINT);
        assertThat(kept.volume()).isEqualTo(volume, within(1e-12));
        assertThat(kept.faces().length).isEqualTo(volume > 0 ? 6 : 0);
        assertThat(kept.closed()).isTrue();
    }

    @Test
    void a_u_shape_cut_across_its_legs_falls_into_two_pieces() {
        Mesh u = Bodies.prism(0, 1, 0, 0, 3, 0, 3, 3, 2, 3, 2, 1, 1, 1, 1, 3, 0, 3);
        Mesh legs = PlaneCut.keptPart(u, plane(0, 1, 0, 0, 2, 0), POINT);
        assertThat(legs.closed()).isTrue();
        assertThat(legs.volume()).isEqualTo(2, within(1e-12));
        assertThat(PlaneCut.section(u, plane(0, 1, 0, 0, 2, 0), POINT).faces()).hasNumberOfRows(2);
    }

    @Test
    void the_section_of_a_pipe_is_a_face_with_a_hole() {
        Mesh outer = Bodies.box(0, 0, 0, 3, 3, 5);
        Mesh pipe = Combination.of(
                Combination.Kind.DIFFERENCE, outer, Bodies.box(1, 1, -1, 2, 2, 6), Bodies.TOLERANCES, remark -> {});
        Mesh section = PlaneCut.section(pipe, plane(0, 0, 1, 0, 0, 2), POINT);
        assertThat(section.faces()).hasNumberOfRows(1);
        assertThat(section.faces()[0]).hasDimensions(2, 4);
        assertThat(section.area()).isEqualTo(8, within(1e-12));
        assertThat(section.plane(0).nz()).isEqualTo(1, within(1e-12));
    }

    @Property(tries = 300)
    void both_parts_of_a_convex_prism_add_up(
            @ForAll @IntRange(min = 3, max = 12) int sides,
            @ForAll @DoubleRange(min = 0.5, max = 8) double radius,
            @ForAll @DoubleRange(min = 0, max = 6.28) double azimuth,
            @ForAll @DoubleRange(min = -1.57, max = 1.57) double tilt,
            @ForAll @DoubleRange(min = -1, max = 1) double offset) {
        Mesh prism = Bodies.prism(0, 3, ngon(sides, radius));
        FacePlane plane = new FacePlane(
                Math.cos(tilt) * Math.cos(azimuth), Math.cos(tilt) * Math.sin(azimuth), Math.sin(tilt), offset);
        Mesh above = PlaneCut.keptPart(prism, plane, POINT);
        Mesh below = PlaneCut.keptPart(prism, plane.flipped(), POINT);
        assertThat(above.closed() && below.closed()).isTrue();
        assertThat(above.volume() + below.volume()).isEqualTo(prism.volume(), within(1e-4 * prism.area()));
        Mesh section = PlaneCut.section(prism, plane, POINT);
        assertThat(above.area() + below.area() - 2 * section.area())
                .isEqualTo(prism.area(), within(1e-4 * (1 + prism.area())));
    }

    static double[] ngon(int sides, double radius) {
        double[] xy = new double[2 * sides];
        for (int i = 0; i < sides; i++) {
            xy[2 * i] = radius * Math.cos(2 * Math.PI * i / sides);
            xy[2 * i + 1] = radius * Math.sin(2 * Math.PI * i / sides);
        }
        return xy;
    }
}
