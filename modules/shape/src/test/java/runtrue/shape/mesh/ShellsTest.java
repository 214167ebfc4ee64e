package runtrue.shape.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import runtrue.shape.solid.Bodies;

class ShellsTest {
    private final List<String> remarks = new ArrayList<>();

    @Property(tries = 100)
    void a_soup_of_triangles_in_any_order_and_any_direction_becomes_six_outward_faces(@ForAll long seed) {
        Mesh box = Bodies.box(-1, 2, 3, 4, 4, 3.5);
        List<double[][]> triangles = new ArrayList<>(Bodies.triangles(box));
        Random random = new Random(seed);
        Collections.shuffle(triangles, random);
        for (double[][] triangle : triangles) {
            if (random.nextBoolean()) {
                double[] kept = triangle[0];
                triangle[0] = triangle[1];
                triangle[1] = kept;
            }
        }
        Mesh mesh = Bodies.welded(triangles, remarks);
        assertThat(mesh.closed()).isTrue();
        assertThat(mesh.faces()).hasNumberOfRows(6);
        assertThat(mesh.volume()).isEqualTo(5 * 2 * 0.5, within(1e-12));
        assertThat(mesh.area()).isEqualTo(box.area(), within(1e-12));
    }

    @Test
    void a_missing_face_leaves_the_body_open_and_its_faces_as_they_were() {
        List<double[][]> triangles =
                Bodies.triangles(Bodies.box(0, 0, 0, 1, 1, 1).inverted());
        Mesh mesh = Bodies.welded(triangles.subList(2, triangles.size()), remarks);
        assertThat(mesh.closed()).isFalse();
        assertThat(mesh.faces()).hasNumberOfRows(5);
        assertThat(mesh.volume()).isNegative();
    }

    @Test
    void points_a_hundredth_of_a_millimetre_apart_are_one() {
        List<double[][]> triangles = Bodies.triangles(Bodies.box(0, 0, 0, 1, 1, 1));
        for (double[][] triangle : triangles) {
            triangle[1][2] += 0.6e-5;
        }
        assertThat(Bodies.welded(triangles, remarks).closed()).isTrue();
    }

    @Test
    void a_shell_within_another_that_looks_the_other_way_is_a_void() {
        List<double[][]> triangles = new ArrayList<>(Bodies.triangles(Bodies.box(0, 0, 0, 4, 4, 4)));
        triangles.addAll(Bodies.triangles(Bodies.box(1, 1, 1, 2, 2, 2).inverted()));
        assertThat(Bodies.welded(triangles, remarks).volume()).isEqualTo(63, within(1e-12));
    }

    @Test
    void two_reversed_bodies_side_by_side_are_both_turned_outward() {
        List<double[][]> triangles =
                new ArrayList<>(Bodies.triangles(Bodies.box(0, 0, 0, 1, 1, 1).inverted()));
        triangles.addAll(Bodies.triangles(Bodies.box(3, 0, 0, 4, 1, 1).inverted()));
        assertThat(Bodies.welded(triangles, remarks).volume()).isEqualTo(2, within(1e-12));
    }

    @Test
    void coplanar_faces_around_a_hole_become_one_face_with_that_hole() {
        double[] xyz = {
            0, 0, 0, 3, 0, 0, 3, 3, 0, 0, 3, 0,
            1, 1, 0, 2, 1, 0, 2, 2, 0, 1, 2, 0
        };
        List<int[][]> ring = List.of(
                new int[][] {{0, 1, 5, 4}}, new int[][] {{1, 2, 6, 5}}, new int[][] {{2, 3, 7, 6}}, new int[][] {
                    {3, 0, 4, 7}
                });
        Mesh mesh = Shells.solid(xyz, ring, Bodies.TOLERANCES, remarks::add);
        assertThat(mesh.faces()).hasNumberOfRows(1);
        assertThat(mesh.faces()[0]).hasDimensions(2, 4);
        assertThat(mesh.area()).isEqualTo(8, within(1e-12));
    }

    @Property(tries = 60)
    void merging_the_facets_of_a_bumpy_sheet_keeps_its_area(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 9) int size) {
        Random random = new Random(seed);
        double[] xyz = new double[3 * (size + 1) * (size + 1)];
        for (int i = 0; i <= size; i++) {
            double bump = random.nextInt(3) * 0.5;
            for (int j = 0; j <= size; j++) {
                int p = 3 * (i * (size + 1) + j);
                xyz[p] = i;
                xyz[p + 1] = j;
                xyz[p + 2] = bump;
            }
        }
        List<int[][]> triangles = new ArrayList<>();
        double area = 0;
        for (int i = 0; i < size; i++) {
            for (int j = 0; j < size; j++) {
                int a = i * (size + 1) + j;
                int b = a + size + 1;
                triangles.add(new int[][] {{a, b, b + 1}});
                triangles.add(new int[][] {{a, b + 1, a + 1}});
                area += Math.hypot(1, xyz[3 * b + 2] - xyz[3 * a + 2]);
            }
        }
        Mesh mesh = Shells.solid(xyz, triangles, Bodies.TOLERANCES, remarks::add);
        assertThat(mesh.faces().length).isLessThanOrEqualTo(size);
        assertThat(mesh.area()).isEqualTo(area, within(1e-9));
    }

    @Test
    void a_corner_on_the_middle_of_an_edge_is_joined_so_that_the_body_closes() {
        double[] xyz = {0, 0, 0, 1, 0, 0, 1, 1, 0, 0, 1, 0, 0, 0, 1, 1, 0, 1, 1, 1, 1, 0, 1, 1, 0.5, 0, 0};
        List<int[][]> faces = List.of(
                new int[][] {{0, 3, 2, 1}},
                new int[][] {{4, 5, 6, 7}},
                new int[][] {{0, 8, 5, 4}},
                new int[][] {{8, 1, 5}},
                new int[][] {{1, 2, 6, 5}},
                new int[][] {{2, 3, 7, 6}},
                new int[][] {{3, 0, 4, 7}});
        Mesh mesh = Shells.solid(xyz, faces, Bodies.TOLERANCES, remarks::add);
        assertThat(mesh.closed()).isTrue();
        assertThat(mesh.faces()).hasNumberOfRows(6);
        assertThat(mesh.faces()[0]).as("straight corners go again").hasDimensions(1, 4);
        assertThat(mesh.volume()).isEqualTo(1, within(1e-12));
    }

    @Test
    void a_twisted_face_is_split_and_remarked() {
        double[] xyz = {0, 0, 0, 1, 0, 0, 1, 1, 0.1, 0, 1, 0};
        Mesh mesh = Shells.solid(xyz, List.<int[][]>of(new int[][] {{0, 1, 2, 3}}), Bodies.TOLERANCES, remarks::add);
        assertThat(mesh.faces()).hasNumberOfRows(2);
        assertThat(remarks).singleElement().asString().contains("1 faces are not plane (by up to 24.9 mm)");
    }

    @Test
    void a_face_without_width_is_left_out() {
        double[] xyz = {0, 0, 0, 1, 0, 0, 1, 1e-6, 0, 0, 1e-6, 0};
        Mesh mesh = Shells.solid(xyz, List.<int[][]>of(new int[][] {{0, 1, 2, 3}}), Bodies.TOLERANCES, remarks::add);
        assertThat(mesh.faces()).isEmpty();
    }

    @Test
    void neighbours_coplanar_but_for_rounding_are_merged_in_the_last_step_only() {
        double[] xyz = {0, 0, 0, 1, 0, 0, 1, 1, 0.00009, 0, 1, 0};
        List<int[][]> halves = List.of(new int[][] {{0, 1, 2}}, new int[][] {{0, 2, 3}});
        Mesh exact = Shells.solid(xyz, halves, Bodies.TOLERANCES, remarks::add);
        assertThat(exact.faces()).hasNumberOfRows(2);
        assertThat(Shells.merged(exact, Bodies.TOLERANCES).faces()).hasNumberOfRows(1);
    }

    @Test
    void facets_of_a_curve_are_not_merged() {
        List<double[][]> triangles = new ArrayList<>();
        double step = Math.toRadians(1.3);
        for (int i = 0; i < 20; i++) {
            double[] a = {30 * Math.sin(i * step), 0, 30 * Math.cos(i * step)};
            double[] b = {30 * Math.sin((i + 1) * step), 0, 30 * Math.cos((i + 1) * step)};
            double[] c = {b[0], 5, b[2]};
            double[] d = {a[0], 5, a[2]};
            triangles.add(new double[][] {a, b, c});
            triangles.add(new double[][] {a, c, d});
        }
        assertThat(Bodies.welded(triangles, remarks).faces()).hasNumberOfRows(20);
    }
}
