package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;
import runtrue.step.StepFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Invented halls whose element volumes are known by formula from the parameters that wrote them. */
class HallsTest {
    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "rundel", "overmere"})
    void elements_have_the_volume_that_they_were_written_with(String hall) {
        Path folder = SharedFiles.of("halls/" + hall);
        JsonNode truth =
                JsonMapper.shared().readTree(folder.resolve("truth.json").toFile());
        List<String> all = new ArrayList<>();
        int compared = 0;
        for (JsonNode file : truth.get("files")) {
            String name = file.get("name").asString();
            try (StepFile step = StepFile.open(folder.resolve(name))) {
                compared += compare(IfcModel.of(step), name, truth, all);
            }
        }
        System.out.printf(Locale.ROOT, "%-12s compared %4d differing %d%n", hall, compared, all.size());
        all.forEach(line -> System.out.println("    " + line));
        assertThat(all).isEmpty();
        assertThat(compared).isPositive();
    }

    private static int compare(IfcModel model, String file, JsonNode truth, List<String> differences) {
        Map<String, IfcEntity> products = new HashMap<>();
        model.all("IfcElement").forEach(product -> products.put(product.text("GlobalId"), product));
        Vector3D origin = Vector3D.of(
                truth.at("/frame/originWorld/0").asDouble(),
                truth.at("/frame/originWorld/1").asDouble(),
                truth.at("/frame/originWorld/2").asDouble());
        ShapeReader reader = ShapeReader.of(Tolerances.standard(), origin);
        int compared = 0;
        for (JsonNode element : truth.get("elements")) {
            IfcEntity product = products.get(element.get("globalId").asString());
            if (!element.get("file").asString().equals(file) || !element.has("volume") || product == null) {
                continue;
            }
            compared++;
            String label = element.get("name") + " " + element.get("role") + " " + product.label();
            Shape shape = reader.read(product);
            if (shape instanceof Shape.Body body) {
                check(label, body, element.get("volume").asDouble(), differences);
            } else {
                differences.add(label + ": " + shape);
            }
        }
        return compared;
    }

    private static void check(String label, Shape.Body body, double volume, List<String> differences) {
        double read = UpwardPlanes.volume(body.faces());
        if (!body.closed()) {
            differences.add(label + " is not closed: " + body.remarks());
        }
        double expected = volume * shareOfCircle(body);
        double slack = label.contains("Barrel") ? Tolerances.standard().chord() * plan(body) : 1e-6 + 1e-6 * volume;
        if (Math.abs(read - expected) > slack) {
            differences.add(String.format(
                    Locale.ROOT, "%s %s volume %.6f, truth %.6f", label, body.representation(), read, volume));
        }
    }

    /** A round bar is read with n sides: of the circle's area that leaves n / (2 pi) sin(2 pi / n). */
    private static double shareOfCircle(Shape.Body body) {
        int sides = body.sweep().map(sweep -> sweep.section().size()).orElse(0);
        boolean round = body.sweep().map(Sweep::profileName).orElse("").startsWith("Rod");
        return round ? sides / (2 * Math.PI) * Math.sin(2 * Math.PI / sides) : 1;
    }

    private static double plan(Shape.Body body) {
        return body.faces().stream()
                .filter(face -> face.normal().getZ() > 0)
                .mapToDouble(face -> UpwardPlanes.area(face) * face.normal().getZ())
                .sum();
    }
}
