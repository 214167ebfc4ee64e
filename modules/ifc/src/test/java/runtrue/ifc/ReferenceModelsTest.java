package runtrue.ifc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runtrue.ifc.schema.Schema;
import runtrue.step.StepFile;
import runtrue.step.StepInstance;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Real files of many authoring programs against facts found with an independent IFC library (models/reference.json). */
class ReferenceModelsTest {
    /** Spaces in this file break off after the eighth attribute. */
    private static final Map<String, List<String>> WRITTEN_WRONGLY =
            Map.of("steel-channels-mm.ifc", List.of("IFCSPACE 8 for 11"));

    static Stream<String> files() {
        return reference().map(file -> file.get("file").asString());
    }

    private static Stream<JsonNode> reference() {
        List<JsonNode> files = new ArrayList<>();
        new ObjectMapper()
                .readTree(SharedFiles.of("models/reference.json").toFile())
                .get("files")
                .forEach(files::add);
        return files.stream();
    }

    private static JsonNode reference(String name) {
        return reference()
                .filter(file -> file.get("file").asString().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("files")
    void countsElementsByClassAndOwnPredefinedType(String name) {
        JsonNode counts = reference(name).get("counts");
        try (StepFile file = StepFile.open(SharedFiles.of("models/" + name))) {
            IfcModel model = IfcModel.of(file);
            for (String kind : List.of("roof", "slab", "covering", "plate", "member", "beam", "column")) {
                String className = "Ifc" + kind.substring(0, 1).toUpperCase(Locale.ROOT) + kind.substring(1);
                Map<String, Integer> expected = new TreeMap<>();
                counts.get(kind)
                        .get("byType")
                        .propertyStream()
                        .forEach(type ->
                                expected.put(type.getKey(), type.getValue().asInt()));
                assertThat(countByType(model, className)).as(className).isEqualTo(expected);
            }
        }
    }

    private static Map<String, Integer> countByType(IfcModel model, String className) {
        Map<String, Integer> counts = new TreeMap<>();
        for (IfcEntity element : model.all(className)) {
            String own = element.enumeration(element.has("ShapeType") ? "ShapeType" : "PredefinedType");
            counts.merge(own.isEmpty() ? "null" : own, 1, Integer::sum);
        }
        return counts;
    }

    @ParameterizedTest
    @MethodSource("files")
    void readsUnits(String name) {
        JsonNode stated = reference(name).get("units");
        try (StepFile file = StepFile.open(SharedFiles.of("models/" + name))) {
            Units units = IfcModel.of(file).units();
            assertThat(units.length()).isEqualTo(toSi(stated, "length", 1));
            assertThat(units.area()).isEqualTo(toSi(stated, "area", units.length() * units.length()));
            // The library that made the reference multiplies in another order: one unit in the last place.
            double volume = toSi(stated, "volume", Math.pow(units.length(), 3));
            assertThat(units.volume()).isCloseTo(volume, within(1e-15 * volume));
            assertThat(units.planeAngle()).isEqualTo(toSi(stated, "planeAngle", 1));
        }
    }

    private static double toSi(JsonNode units, String kind, double otherwise) {
        return units.has(kind) ? units.get(kind).get("toSI").asDouble() : otherwise;
    }

    /** The writers of these files knew the schema: a table with a wrong attribute count would show here. */
    @ParameterizedTest
    @MethodSource("files")
    void knowsEveryClassWithAsManyAttributesAsTheFileHas(String name) {
        try (StepFile file = StepFile.open(SharedFiles.of("models/" + name))) {
            Schema schema = Schema.of(file.header().schemas().get(0)).orElseThrow();
            List<String> differing = new ArrayList<>();
            for (String keyword : new TreeSet<>(file.keywords())) {
                StepInstance first = file.instance(file.idsOf(keyword)[0]);
                int expected = Objects.requireNonNull(schema.find(keyword), keyword)
                        .attributes()
                        .size();
                if (expected != first.attributes().size()) {
                    differing.add(keyword + " " + first.attributes().size() + " for " + expected);
                }
            }
            assertThat(differing).isEqualTo(WRITTEN_WRONGLY.getOrDefault(name, List.of()));
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void placesEveryRoofSlabAndMemberAndDescribesIt(String name) {
        try (StepFile file = StepFile.open(SharedFiles.of("models/" + name))) {
            IfcModel model = IfcModel.of(file);
            for (String className : List.of("IfcRoof", "IfcSlab", "IfcBeam", "IfcMember")) {
                for (IfcEntity element : model.all(className)) {
                    assertThat(model.placement(element).toArray()).doesNotContain(Double.NaN);
                    assertThat(model.describe(element).globalId()).hasSize(22);
                }
            }
        }
    }

    @Test
    void readsAFileOfTheEarliestSchema() {
        try (StepFile file = StepFile.open(SharedFiles.of("models/gable-early-schema.ifc"))) {
            IfcModel model = IfcModel.of(file);
            Element roof = model.describe(model.entity(11234));

            assertThat(roof.predefinedType()).isEqualTo("ROOF");
            assertThat(roof.building()).isEqualTo("Vogel_Einzelhaus");
            assertThat(roof.storey()).isEqualTo("Vogel_DG");
        }
    }

    @Test
    void readsStatedPropertiesOfAFileInFeet() {
        try (StepFile file = StepFile.open(SharedFiles.of("models/shed-in-feet.ifc"))) {
            IfcModel model = IfcModel.of(file);
            Element slab = model.describe(model.all("IfcSlab").get(0));

            PropertyValue pitch = Objects.requireNonNull(slab.properties().get("Pset_SlabCommon.PitchAngle"));
            assertThat(pitch.number().orElseThrow()).isCloseTo(Math.toRadians(30), within(1e-9));
            assertThat(slab.layers()).hasSize(1);
            assertThat(slab.layers().get(0).thickness().orElseThrow()).isCloseTo(0.3048, within(1e-12));
        }
    }
}
