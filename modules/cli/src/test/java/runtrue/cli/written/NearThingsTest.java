package runtrue.cli.written;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.IfcModel;
import runtrue.ifc.select.Selection;
import runtrue.roof.Surround;
import runtrue.roof.read.DropElements;
import runtrue.samples.ifc.AngleUnit;
import runtrue.samples.ifc.Bodies;
import runtrue.samples.ifc.Frame;
import runtrue.samples.ifc.IfcFile;
import runtrue.samples.ifc.LengthUnit;
import runtrue.samples.ifc.Place;
import runtrue.samples.ifc.Profiles;
import runtrue.samples.ifc.Schema;
import runtrue.shape.Tolerances;
import runtrue.step.StepFile;

/** Whatever has a body may stand in the sheets' way, whoever modelled it. */
class NearThingsTest {
    private static final Vector3D FAR = Vector3D.of(1000, 1000, 1000);

    /** A pipe 10 m long and one bent a quarter round, as plumbers' models have them. */
    private static final String PIPES = """
            #90001=IFCPIPESEGMENT('0000000000000000090001',$,'Straight pipe',$,$,#90030,#90002,$,$);
            #90002=IFCPRODUCTDEFINITIONSHAPE($,$,(#90003));
            #90003=IFCSHAPEREPRESENTATION($,'Body','AdvancedSweptSolid',(#90004));
            #90004=IFCSWEPTDISKSOLID(#90005,0.05,$,$,$);
            #90005=IFCPOLYLINE((#90006,#90007));
            #90006=IFCCARTESIANPOINT((0.,0.,0.));
            #90007=IFCCARTESIANPOINT((10.,0.,0.));
            #90011=IFCPIPEFITTING('0000000000000000090011',$,'Bend',$,$,#90030,#90012,$,$);
            #90012=IFCPRODUCTDEFINITIONSHAPE($,$,(#90013));
            #90013=IFCSHAPEREPRESENTATION($,'Body','SweptSolid',(#90014));
            #90014=IFCREVOLVEDAREASOLID(#90015,#90016,#90017,1.5707963);
            #90015=IFCCIRCLEPROFILEDEF(.AREA.,$,#90018,0.05);
            #90016=IFCAXIS2PLACEMENT3D(#90006,$,$);
            #90017=IFCAXIS1PLACEMENT(#90019,#90020);
            #90018=IFCAXIS2PLACEMENT2D(#90021,$);
            #90019=IFCCARTESIANPOINT((2.,0.,0.));
            #90020=IFCDIRECTION((0.,1.,0.));
            #90030=IFCLOCALPLACEMENT($,#90016);
            #90021=IFCCARTESIANPOINT((0.,0.));
            """;

    @TempDir
    Path folder;

    private static IfcFile file() {
        return new IfcFile(
                "services.ifc", Schema.IFC4, LengthUnit.METRE, AngleUnit.RADIAN, "Invented", OptionalDouble.empty());
    }

    private List<String> found(String text, Vector3D low, Vector3D high) throws IOException {
        Path path = folder.resolve("services.ifc");
        Files.writeString(path, text);
        try (StepFile step = StepFile.open(path)) {
            return DropElements.read(List.of(IfcModel.of(step)), Selection.standard(), Tolerances.standard())
                    .surround()
                    .within(Surround.Role.THING, low, high)
                    .stream()
                    .map(t -> t.element().name())
                    .toList();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "IFCPIPESEGMENT, true",
        "IFCDUCTSEGMENT, true",
        "IFCCABLECARRIERSEGMENT, true",
        "IFCPIPEFITTING, true",
        "IFCSANITARYTERMINAL, true",
        "IFCSOLARDEVICE, true",
        "IFCRAILING, true",
        "IFCCHIMNEY, true",
        "IFCFURNITURE, true",
        "IFCTRANSPORTELEMENT, true",
        "IFCMECHANICALFASTENER, true",
        "IFCBUILDINGELEMENTPROXY, true",
        "IFCCOVERING, false",
        "IFCFOOTING, false",
        "IFCVIRTUALELEMENT, false",
        "IFCOPENINGELEMENT, false",
        "IFCWALL, true",
        "IFCSLAB, true",
    })
    void elements_of_every_trade_are_looked_at_but_not_those_of_the_ground_nor_coverings(String entity, boolean looked)
            throws IOException {
        IfcFile file = file();
        Place storey = file.storey(file.building("Shed", Frame.WORLD), "Ground", 0);
        Bodies bodies = file.bodies();
        Profiles profiles = file.profiles();
        file.element(entity, "It")
                .body(bodies.extrusion(profiles.rectangle(0, 0, 1, 1), Frame.WORLD, 0.01))
                .addTo(storey);

        assertThat(found(file.text(), FAR.negate(), FAR).contains("It")).isEqualTo(looked);
    }

    /** Or all services of a hall would be turned into meshes to find those few that reach its roof. */
    @ParameterizedTest
    @CsvSource({
        "-1, 1, true, true",
        "5, 6, true, false",
        "10.02, 11, true, false",
        "10.1, 11, false, false",
        "-3, -2.3, false, false"
    })
    void pipes_are_asked_for_only_where_they_are(double from, double to, boolean pipe, boolean bend)
            throws IOException {
        IfcFile file = file();
        file.storey(file.building("Shed", Frame.WORLD), "Ground", 0);
        String text = file.text();
        int end = text.lastIndexOf("ENDSEC;");

        List<String> found = found(
                text.substring(0, end) + PIPES + text.substring(end), Vector3D.of(from, -1, -1), Vector3D.of(to, 1, 1));

        assertThat(found.contains("Straight pipe")).isEqualTo(pipe);
        assertThat(found.contains("Bend")).isEqualTo(bend);
    }
}
