package runtrue.roof.skin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.Element;
import runtrue.roof.ReadElement;
import runtrue.shape.Face;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;

/** One body of two level slabs: 10 x 8 m below, and one of some length above its first metres. Worked by hand. */
class HiddenFacesTest {
    @ParameterizedTest(name = "{1} m of the length covered from {0} m above")
    @CsvSource({
        // an inner layer sticks out from under the outer one: only what sticks out is skin
        "0.2, 2, 64",
        // the eaves of something higher hang over a roof: it is roof below them too
        "1.8, 2, 80",
        // a loft floor under its roof: what sticks out is a parapet's foot or eaves
        "1.8, 7, 24"
    })
    void what_is_left_of_the_lower_slab_depends_on_how_near_and_how_far_it_is_covered(
            double above, double length, double left) {
        List<Face> faces = new ArrayList<>(slab(10, 0));
        faces.addAll(slab(length, above));

        List<SkinFace> skin = new SkinReader(Tolerances.standard()).read(element(faces));

        assertThat(skin.stream()
                        .filter(f -> f.lowest() < 0.1)
                        .mapToDouble(f -> PlanarArea.vector(f.outline()).norm())
                        .sum())
                .isCloseTo(left, within(1e-6));
    }

    /** Top at the level given, 0.05 m thick; its upright sides are left out, as they are no skin. */
    private static List<Face> slab(double length, double top) {
        List<Vector3D> below = ring(length, top - 0.05);
        Collections.reverse(below);
        return List.of(
                new Face(Vector3D.Unit.PLUS_Z, ring(length, top), List.of()),
                new Face(Vector3D.Unit.MINUS_Z, below, List.of()));
    }

    private static List<Vector3D> ring(double length, double z) {
        return new ArrayList<>(List.of(
                Vector3D.of(0, 0, z), Vector3D.of(length, 0, z), Vector3D.of(length, 8, z), Vector3D.of(0, 8, z)));
    }

    private static ReadElement element(List<Face> faces) {
        Element element = new Element(
                "id",
                "hall.ifc",
                1,
                "IfcRoof",
                "",
                "",
                "roof",
                "",
                "",
                "Hall",
                "Roof",
                "",
                "",
                List.of(),
                List.of(),
                Map.of());
        return new ReadElement(
                element, "made for a test", new Shape.Body(faces, true, Optional.empty(), "", List.of()));
    }
}
