package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;
import runtrue.step.StepFile;

/** Elements of real files whose body is an advanced brep, of whatever class: windows and doors have the curved faces. */
class RealAdvancedBrepsTest {
    @ParameterizedTest
    @CsvSource({
        "metal-roof-advanced-brep-ifc4.ifc, 1",
        "roof-as-floor-slab-ifc4.ifc, 41",
        "timber-floors-and-roof-ifc4.ifc, 14"
    })
    void are_read_and_close(String name, int expected) {
        Path path = SharedFiles.of("models").resolve(name);
        List<String> faults = new ArrayList<>();
        int bodies = 0;
        try (StepFile file = StepFile.open(path)) {
            ShapeReader reader = ShapeReader.of(Tolerances.standard(), Vector3D.ZERO);
            for (IfcEntity product : IfcModel.of(file).all("IfcElement")) {
                if (items(product).stream().noneMatch(item -> item.isA("IfcAdvancedBrep"))) {
                    continue;
                }
                bodies++;
                Shape shape = reader.read(product);
                if (shape instanceof Shape.Unread unread) {
                    faults.add(product.label() + ": " + unread.reason());
                } else if (!((Shape.Body) shape).closed()) {
                    faults.add(product.label() + " is open");
                }
            }
        }
        assertThat(faults).isEmpty();
        assertThat(bodies).isEqualTo(expected);
    }

    private static List<IfcEntity> items(IfcEntity product) {
        List<IfcEntity> items = new ArrayList<>();
        for (Representation representation : Representation.bodies(product)) {
            for (IfcEntity item : representation.items()) {
                if (item.isA("IfcMappedItem")) {
                    items.addAll(item.ref("MappingSource")
                            .ref("MappedRepresentation")
                            .refs("Items"));
                } else {
                    items.add(item);
                }
            }
        }
        return items;
    }

    /** Volumes by an independent IFC library (web-ifc 0.0.78), of bodies that it closes: those with plane faces. */
    @ParameterizedTest
    @CsvSource({"12725, 0.191780", "13438, 0.196752", "24753, 0.443412", "57674, 0.251974", "61833, 0.105168"})
    void have_the_volume_that_another_library_has(int id, double volume) {
        try (StepFile file = StepFile.open(SharedFiles.of("models").resolve("roof-as-floor-slab-ifc4.ifc"))) {
            Shape shape = ShapeReader.of(Tolerances.standard(), Vector3D.ZERO)
                    .read(IfcModel.of(file).entity(id));
            assertThat(UpwardPlanes.volume(((Shape.Body) shape).faces())).isEqualTo(volume, within(1e-6));
        }
    }
}
