package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.solid.Bodies;

class TriangleBodyTest {
    private static Shape body(Mesh... meshes) {
        return body(AffineTransformMatrix3D.identity(), meshes);
    }

    private static Shape body(AffineTransformMatrix3D world, Mesh... meshes) {
        List<double[]> points = new ArrayList<>();
        for (Mesh mesh : meshes) {
            Bodies.triangles(mesh).forEach(t -> points.addAll(List.of(t)));
        }
        double[] xyz = points.stream().flatMapToDouble(Arrays::stream).toArray();
        int[] corners = IntStream.range(0, points.size()).toArray();
        return TriangleBody.of(xyz, corners, world, Tolerances.standard(), "engine 2", "Body/Any");
    }

    @Test
    void triangles_of_a_box_become_its_six_faces_and_the_engine_is_named() {
        Shape.Body body = (Shape.Body) body(Bodies.box(0, 0, 0, 4, 3, 0.2));
        assertThat(body.faces()).hasSize(6);
        assertThat(body.closed()).isTrue();
        assertThat(body.engine()).isEqualTo("engine 2");
        assertThat(body.builtIn()).isFalse();
    }

    @Test
    void boxes_that_share_an_edge_and_a_face_stay_closed_boxes_of_their_own() {
        Shape.Body body = (Shape.Body)
                body(Bodies.box(0, 0, 0, 1, 1, 1), Bodies.box(1, 1, 0, 2, 2, 1), Bodies.box(1, 0, 0, 2, 1, 1));
        assertThat(body.faces()).hasSize(18);
        assertThat(body.closed()).isTrue();
    }

    @Test
    void a_hollow_keeps_looking_into_itself() {
        Shape.Body body = (Shape.Body)
                body(Bodies.box(0, 0, 0, 4, 4, 4), Bodies.box(1, 1, 1, 2, 2, 2).inverted());
        assertThat(body.closed()).isTrue();
        assertThat(body.faces())
                .filteredOn(face -> face.outline().get(0).getX() == 2
                        && face.outline().stream().allMatch(p -> p.getX() == 2))
                .singleElement()
                .satisfies(face -> assertThat(face.normal().getX()).isEqualTo(-1));
    }

    @Test
    void what_is_not_closed_is_said_to_be_open() {
        Mesh box = Bodies.box(0, 0, 0, 4, 3, 0.2);
        int[][][] faces = Arrays.copyOf(box.faces(), 5);
        Shape.Body body = (Shape.Body) body(new Mesh(box.xyz(), faces, false));
        assertThat(body.closed()).isFalse();
        assertThat(body.faces()).hasSize(5);
    }

    @Test
    void a_body_beyond_the_earth_is_not_read() {
        Shape shape =
                body(AffineTransformMatrix3D.createTranslation(Vector3D.of(2e8, 0, 0)), Bodies.box(0, 0, 0, 1, 1, 1));
        assertThat(shape).isInstanceOf(Shape.Unread.class);
    }

    @Test
    void triangles_without_area_make_no_body() {
        Shape shape = TriangleBody.of(
                new double[] {0, 0, 0, 1, 0, 0, 2, 0, 0},
                new int[] {0, 1, 2},
                AffineTransformMatrix3D.identity(),
                Tolerances.standard(),
                "engine 2",
                "");
        assertThat(shape).isInstanceOf(Shape.Unread.class);
    }
}
