package runtrue.geometryserver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;
import runtrue.shape.ElementShapes;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;
import runtrue.step.StepFile;

/**
 * Swept bodies and primitives of IFC2X3 against the IfcOpenShell executable: where they lie (boxes, which catches a
 * profile turned the wrong way) and their volume. Curves are followed there by other chords: 3 mm and 2 % allow for that.
 */
class SweptBodiesTest {
    private static final String AXIS = "#213=IFCAXIS1PLACEMENT(#216,#214);#214=IFCDIRECTION((0.,1.,0.));";
    private static final String CORNER = "#211=IFCRECTANGLEPROFILEDEF(.AREA.,$,#215,200.,100.);"
            + "#215=IFCAXIS2PLACEMENT2D(#217,$);#217=IFCCARTESIANPOINT((140.,90.));";

    private final GeometryServer server = GeometryServer.bundled();

    @AfterEach
    void close() {
        server.close();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "#200=IFCREVOLVEDAREASOLID(#211,#11,#213,70.);#216=IFCCARTESIANPOINT((-500.,0.,0.));" + AXIS + CORNER,
                "#200=IFCREVOLVEDAREASOLID(#211,#11,#213,360.);#216=IFCCARTESIANPOINT((-500.,0.,0.));" + AXIS + CORNER,
                "#200=IFCSWEPTDISKSOLID(#221,100.,60.,0.,1.);#221=IFCPOLYLINE((#10,#231));"
                        + "#231=IFCCARTESIANPOINT((2000.,300.,900.));",
                "#200=IFCSURFACECURVESWEPTAREASOLID(#211,#11,#221,0.,1.,#222);#222=IFCPLANE(#11);"
                        + "#221=IFCPOLYLINE((#10,#231));#231=IFCCARTESIANPOINT((2000.,300.,0.));" + CORNER,
                "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,1000.);"
                        + "#211=IFCARBITRARYCLOSEDPROFILEDEF(.AREA.,$,#212);#212=IFCCOMPOSITECURVE((#221,#222),.F.);"
                        + "#221=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#241);"
                        + "#222=IFCCOMPOSITECURVESEGMENT(.CONTINUOUS.,.T.,#242);"
                        + "#241=IFCTRIMMEDCURVE(#251,(IFCPARAMETERVALUE(0.)),(IFCPARAMETERVALUE(180.)),.T.,.PARAMETER.);"
                        + "#251=IFCELLIPSE(#252,500.,250.);#252=IFCAXIS2PLACEMENT2D(#13,#253);"
                        + "#253=IFCDIRECTION((0.8,0.6));#242=IFCPOLYLINE((#254,#255));"
                        + "#254=IFCCARTESIANPOINT((-400.,-300.));#255=IFCCARTESIANPOINT((400.,300.));",
                "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,1000.);#211=IFCDERIVEDPROFILEDEF(.AREA.,$,#221,#222,$);"
                        + "#221=IFCLSHAPEPROFILEDEF(.AREA.,$,#14,100.,60.,10.,$,$,$,$,$);"
                        + "#222=IFCCARTESIANTRANSFORMATIONOPERATOR2D(#223,$,#224,2.);#223=IFCDIRECTION((0.6,0.8));"
                        + "#224=IFCCARTESIANPOINT((30.,40.));",
                "#200=IFCEXTRUDEDAREASOLID(#211,#11,#12,1000.);"
                        + "#211=IFCTRAPEZIUMPROFILEDEF(.AREA.,$,#14,600.,400.,300.,50.);",
                "#200=IFCCSGSOLID(#211);#211=IFCBLOCK(#11,400.,300.,200.);",
                "#200=IFCCSGSOLID(#211);#211=IFCRIGHTCIRCULARCONE(#11,1000.,500.);",
                "#200=IFCCSGSOLID(#211);#211=IFCRIGHTCIRCULARCYLINDER(#11,1000.,500.);",
                "#200=IFCCSGSOLID(#211);#211=IFCSPHERE(#11,500.);"
            })
    void lie_where_an_independent_program_has_them(String data) {
        Platform.assumeExecutable();
        String slab = ModelText.slab(100, "0000000000000000000100", "#15");
        try (StepFile file = ModelText.file(slab + data)) {
            IfcModel model = IfcModel.of(file);
            IfcEntity element = model.entity(100);
            GeometryServer.Answer answer = server.meshes(model, List.of(element));
            ProgramMesh mesh = Objects.requireNonNull(answer.meshes().get(100), "no mesh there");
            TriangleMesh theirs = TriangleMesh.of(
                    mesh.xyz(), mesh.corners(), mesh.matrix(), model.units().length());
            Shape ours = ElementShapes.builtIn()
                    .read(List.of(element), Tolerances.standard(), Vector3D.ZERO)
                    .shapes()
                    .get(0);
            assertThat(ours).isInstanceOfSatisfying(Shape.Body.class, body -> compare(data, body, theirs));
        }
    }

    private static void compare(String data, Shape.Body ours, TriangleMesh theirs) {
        double volume = Measured.of(ours).volume().orElseThrow();
        System.out.printf(Locale.ROOT, "%-60.60s here %.6f there %.6f%n", data, volume, theirs.volume());
        double[] box =
                box(ours.faces().stream().flatMap(f -> f.outline().stream()).toList());
        double[] other = box(theirs.triangles().stream().flatMap(Arrays::stream).toList());
        for (int i = 0; i < 6; i++) {
            assertThat(box[i]).isCloseTo(other[i], within(0.003));
        }
        assertThat(volume).isCloseTo(theirs.volume(), withinPercentage(2));
    }

    private static double[] box(Iterable<Vector3D> points) {
        double max = Double.POSITIVE_INFINITY;
        double[] box = {max, max, max, -max, -max, -max};
        for (Vector3D p : points) {
            double[] c = p.toArray();
            for (int k = 0; k < 3; k++) {
                box[k] = Math.min(box[k], c[k]);
                box[k + 3] = Math.max(box[k + 3], c[k]);
            }
        }
        return box;
    }
}
