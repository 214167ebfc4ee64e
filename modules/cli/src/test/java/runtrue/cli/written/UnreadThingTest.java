package runtrue.cli.written;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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

/** Of what stands near a roof, that which cannot be read is told of, and what has no body of its own is not. */
class UnreadThingTest {
    private static final Vector3D FAR = Vector3D.of(1000, 1000, 1000);

    @Test
    void a_plate_whose_body_makes_no_sense_is_told_of(@TempDir Path folder) throws IOException {
        IfcFile file = new IfcFile(
                "plates.ifc", Schema.IFC4, LengthUnit.METRE, AngleUnit.RADIAN, "Invented", OptionalDouble.empty());
        Place storey = file.storey(file.building("Shed", Frame.WORLD), "Ground", 0);
        Bodies bodies = file.bodies();
        Profiles profiles = file.profiles();
        file.element("IFCPLATE", "Good")
                .body(bodies.extrusion(profiles.rectangle(0, 0, 1, 1), Frame.WORLD, 0.01))
                .addTo(storey);
        file.element("IFCPLATE", "Turned by nothing")
                .body(bodies.revolution(profiles.rectangle(0, 1, 1, 2), Frame.WORLD, 0))
                .addTo(storey);
        file.element("IFCELEMENTASSEMBLY", "Without a body").addTo(storey);
        Path path = folder.resolve("plates.ifc");
        Files.writeString(path, withPlateInItself(file.text()));

        try (StepFile step = StepFile.open(path)) {
            Surround surround = DropElements.read(
                            List.of(IfcModel.of(step)), Selection.standard(), Tolerances.standard())
                    .surround();
            assertThat(surround.within(Surround.Role.THING, FAR.negate(), FAR))
                    .extracting(t -> t.element().name())
                    .containsExactly("Good");
            // Its section and axis are known, and with them how far off it can be.
            assertThat(surround.unread(Surround.Role.THING, new Surround.Box(FAR.negate(), FAR)::overlaps))
                    .extracting(e -> e.name())
                    .containsExactly("Turned by nothing");
            assertThat(surround.unread(Surround.Role.THING, new Surround.Box(FAR, FAR)::overlaps))
                    .isEmpty();
            assertThat(surround.unlocated(Surround.Role.THING))
                    .extracting(e -> e.name())
                    .containsExactly("In itself");
        }
    }

    /** A plate whose mapped shape is mapped from itself: no library would write it. */
    private static String withPlateInItself(String text) {
        int end = text.lastIndexOf("ENDSEC;");
        return text.substring(0, end) + """
                #90001=IFCPLATE('0000000000000000090001',$,'In itself',$,$,$,#90002,$,$);
                #90002=IFCPRODUCTDEFINITIONSHAPE($,$,(#90003));
                #90003=IFCSHAPEREPRESENTATION($,'Body','MappedRepresentation',(#90004));
                #90004=IFCMAPPEDITEM(#90005,#90006);
                #90005=IFCREPRESENTATIONMAP(#90007,#90003);
                #90006=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#90008,$,$);
                #90007=IFCAXIS2PLACEMENT3D(#90008,$,$);
                #90008=IFCCARTESIANPOINT((0.,0.,0.));
                """ + text.substring(end);
    }
}
