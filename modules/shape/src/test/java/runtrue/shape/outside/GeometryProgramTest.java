package runtrue.shape.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;
import runtrue.shape.Shape;
import runtrue.shape.ShapeReader;
import runtrue.shape.SharedFiles;
import runtrue.shape.Tolerances;
import runtrue.shape.UpwardPlanes;
import runtrue.step.StepFile;

/**
 * Slabs, roofs, beams and members of real IFC2X3 models against the IfcOpenShell executable: volume of closed bodies and
 * upward area. Both have to agree to 0.5 %; its coordinates are 32-bit floats, which is far finer than that.
 */
class GeometryProgramTest {
    private static final double SAME = 0.005;

    /**
     * Square hollow sections whose outlines have rounded corners: an arc is followed here by chords up to 2 mm off it, there
     * by finer ones, and of a wall 6 mm thick that takes up to 0.8 % of the section's area.
     */
    private static final String ROUNDED_CORNERS = "NZ-SHS beam";

    private static final double SAME_WITH_ROUNDED_CORNERS = 0.01;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "gable-oblique-mm.ifc",
                "eleven-slab-roof-ifc2x3.ifc",
                "roof-shapes-brep-and-clipped.ifc",
                "mansard-terrace-breps.ifc",
                "steel-channels-mm.ifc"
            })
    void volumes_and_upward_areas_are_those_of_an_independent_program(String name, @TempDir Path folder)
            throws Exception {
        assumeTrue(GeometryProgram.runsHere(), "the executable runs on Linux x86-64 only");
        Path path = SharedFiles.of("models").resolve(name);
        try (StepFile file = StepFile.open(path)) {
            IfcModel model = IfcModel.of(file);
            Map<String, TriangleMesh> meshes =
                    GeometryProgram.meshes(path, model.units().length(), folder);
            Comparison comparison = new Comparison(meshes);
            for (String ifcClass : List.of("IfcSlab", "IfcRoof", "IfcBeam", "IfcMember")) {
                model.all(ifcClass).forEach(comparison::add);
            }
            System.out.println(comparison.line(name));
            comparison.differences.forEach(d -> System.out.println("    " + d));
            assertThat(comparison.compared).isPositive();
            assertThat(comparison.differences).isEmpty();
        }
    }

    /** What was found for one file. */
    private static final class Comparison {
        private final Map<String, TriangleMesh> meshes;
        private final ShapeReader reader = ShapeReader.of(Tolerances.standard(), Vector3D.ZERO);
        final List<String> differences = new ArrayList<>();
        int compared;
        private int volumes;
        private int neither;
        private int onlyHere;

        Comparison(Map<String, TriangleMesh> meshes) {
            this.meshes = meshes;
        }

        String line(String name) {
            return String.format(
                    Locale.ROOT,
                    "%-36s compared %3d (closed %3d)  differing %3d  no shape in either %3d  only here %3d",
                    name,
                    compared,
                    volumes,
                    differences.size(),
                    neither,
                    onlyHere);
        }

        void add(IfcEntity product) {
            TriangleMesh mesh = meshes.get(product.text("GlobalId"));
            Shape shape = reader.read(product);
            if (shape instanceof Shape.Unread unread) {
                if (mesh == null) {
                    neither++;
                } else {
                    differences.add(product.label() + " is unread here: " + unread.reason());
                }
            } else if (mesh == null) {
                onlyHere++;
            } else {
                compare(product, (Shape.Body) shape, mesh);
            }
        }

        private void compare(IfcEntity product, Shape.Body body, TriangleMesh mesh) {
            compared++;
            differ(product, body, "upward area", upwardArea(body), mesh.upwardArea());
            if (body.closed() && mesh.closed()) {
                volumes++;
                differ(product, body, "volume", UpwardPlanes.volume(body.faces()), mesh.volume());
            }
        }

        private static double upwardArea(Shape.Body body) {
            return body.faces().stream()
                    .filter(f -> f.normal().getZ() > 0.05)
                    .mapToDouble(UpwardPlanes::area)
                    .sum();
        }

        private void differ(IfcEntity product, Shape.Body body, String what, double ours, double theirs) {
            double same = product.text("Name").startsWith(ROUNDED_CORNERS) ? SAME_WITH_ROUNDED_CORNERS : SAME;
            if (!(Math.abs(ours - theirs) <= same * Math.abs(theirs))) {
                differences.add(String.format(
                        Locale.ROOT,
                        "%s %s %s: %s here %.5f, there %.5f",
                        product.label(),
                        product.text("GlobalId"),
                        body.representation(),
                        what,
                        ours,
                        theirs));
            }
        }
    }
}
