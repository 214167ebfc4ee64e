package runtrue.roof.halls;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.StreamSupport;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcModel;
import runtrue.ifc.select.Selection;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.RoofSettings;
import runtrue.roof.Roofs;
import runtrue.roof.SetOut;
import runtrue.roof.read.DropElements;
import runtrue.shape.Tolerances;
import runtrue.step.StepFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A steel hall whose figures are exactly known, and what was read of it. */
record Hall(JsonNode truth, DropElements elements, Roof roof) {
    static Hall read(String name, double coverWidth) {
        return read(name, coverWidth, OptionalDouble.empty());
    }

    static Hall read(String name, double coverWidth, double buildUpDepth) {
        return read(name, coverWidth, OptionalDouble.of(buildUpDepth));
    }

    private static Hall read(String name, double coverWidth, OptionalDouble buildUpDepth) {
        Path folder = SharedFiles.folder("halls").resolve(name);
        JsonNode truth =
                JsonMapper.shared().readTree(folder.resolve("truth.json").toFile());
        List<StepFile> files = new ArrayList<>();
        try {
            List<IfcModel> models = new ArrayList<>();
            for (JsonNode file : truth.get("files")) {
                StepFile step = StepFile.open(folder.resolve(file.get("name").asString()));
                files.add(step);
                models.add(IfcModel.of(step));
            }
            Tolerances tolerances = Tolerances.standard();
            DropElements elements = DropElements.read(models, Selection.standard(), tolerances);
            OptionalDouble north = models.get(0).trueNorth();
            String setOutFrom = truth.at("/planes/0/sheets/0/setOutFrom").asString();
            SetOut setOut = setOutFrom.contains("right") ? SetOut.RIGHT : SetOut.LEFT;
            RoofSettings settings =
                    new RoofSettings(coverWidth, setOut, buildUpDepth, 0.6, elements.origin(), north, tolerances);
            return new Hall(
                    truth, elements, Roofs.layOut(elements.roofs(), elements.members(), elements.surround(), settings));
        } finally {
            files.forEach(StepFile::close);
        }
    }

    List<JsonNode> truePlanes() {
        return StreamSupport.stream(truth.get("planes").spliterator(), false).toList();
    }

    /** The plane that was read nearest to a true one and falls the same way. */
    PlaneLayout match(JsonNode plane) {
        Vector3D middle = world(plane, centre(plane.get("outlineUV"), 0), centre(plane.get("outlineUV"), 1));
        return roof.planes().stream()
                .min(Comparator.comparingDouble(l -> distance(l, middle)))
                .orElseThrow(() -> new AssertionError("no plane was read"));
    }

    private double distance(PlaneLayout layout, Vector3D worldPoint) {
        Vector3D local = worldPoint.subtract(roof.settings().origin());
        var centre = layout.plane().outline().getEnvelopeInternal().centre();
        return layout.plane().frame().at(centre.x, centre.y).distance(local);
    }

    private static double centre(JsonNode ring, int axis) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (JsonNode point : ring) {
            low = Math.min(low, point.get(axis).asDouble());
            high = Math.max(high, point.get(axis).asDouble());
        }
        return (low + high) / 2;
    }

    /** A point of a true plane in world metres. */
    Vector3D world(JsonNode plane, double u, double v) {
        Vector3D local = vector(plane.get("origin"))
                .add(vector(plane.get("acrossDirection")).multiply(u))
                .add(vector(plane.get("upDirection")).multiply(v));
        return world(local);
    }

    Vector3D world(Vector3D local) {
        JsonNode frame = truth.get("frame");
        double turn = Math.toRadians(frame.get("rotationDeg").asDouble());
        Vector3D turned = Vector3D.of(
                local.getX() * Math.cos(turn) - local.getY() * Math.sin(turn),
                local.getX() * Math.sin(turn) + local.getY() * Math.cos(turn),
                local.getZ());
        return turned.add(vector(frame.get("originWorld")));
    }

    static Vector3D vector(JsonNode xyz) {
        return Vector3D.of(
                xyz.get(0).asDouble(), xyz.get(1).asDouble(), xyz.get(2).asDouble());
    }
}
