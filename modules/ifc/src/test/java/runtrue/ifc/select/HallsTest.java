package runtrue.ifc.select;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.ifc.IfcModel;
import runtrue.ifc.SharedFiles;
import runtrue.step.StepFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Steel halls whose truth is known by construction (halls/truth.json): nothing is set, everything is found. */
class HallsTest {
    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "rundel", "overmere"})
    void findsEveryRoofBodyAndNothingElse(String hall) {
        assertThat(found(hall, FoundElements::roofs, element -> true))
                .isEqualTo(truth(hall, Set.of("roof body", "sheet")))
                .isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "rundel", "overmere"})
    void findsEveryPurlinAmongTheSupports(String hall) {
        assertThat(found(hall, FoundElements::supports, element -> true))
                .containsAll(truth(hall, Set.of("purlin")))
                .isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void tellsPurlinsByTypeOrNameWhereTheModelDoes(String hall) {
        Set<String> told = found(hall, FoundElements::supports, HallsTest::toldAsPurlin);

        // "Traufpfette" is a purlin by its name; that it carries nothing shows by its position only.
        told.removeAll(truth(hall, Set.of("eave beam")));
        assertThat(told).isEqualTo(truth(hall, Set.of("purlin")));
    }

    private static boolean toldAsPurlin(FoundElement element) {
        return !element.evidence().equals("class only") && !element.evidence().contains("RAFTER");
    }

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "rundel", "overmere"})
    void readsTrueNorth(String hall) {
        JsonNode frame = json(hall).get("frame");
        double expected = frame.has("trueNorthDeg") ? frame.get("trueNorthDeg").asDouble() : 0;
        for (String name : files(hall)) {
            try (StepFile file = StepFile.open(SharedFiles.of("halls/" + hall + "/" + name))) {
                double read = IfcModel.of(file).trueNorth().orElse(0);
                assertThat(Math.toDegrees(read)).isCloseTo(expected, within(1e-6));
            }
        }
    }

    private static Set<String> found(
            String hall, Function<FoundElements, List<FoundElement>> kind, Predicate<FoundElement> wanted) {
        Set<String> ids = new TreeSet<>();
        for (String name : files(hall)) {
            try (StepFile file = StepFile.open(SharedFiles.of("halls/" + hall + "/" + name))) {
                kind.apply(ElementFinder.find(IfcModel.of(file), Selection.standard())).stream()
                        .filter(wanted)
                        .map(element -> element.entity().text("GlobalId"))
                        .forEach(ids::add);
            }
        }
        return ids;
    }

    private static Set<String> truth(String hall, Set<String> roles) {
        return json(hall)
                .get("elements")
                .valueStream()
                .filter(element -> roles.contains(element.get("role").asString()))
                .map(element -> element.get("globalId").asString())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> files(String hall) {
        List<String> names = new ArrayList<>();
        json(hall).get("files").forEach(file -> names.add(file.get("name").asString()));
        return names;
    }

    private static JsonNode json(String hall) {
        return new ObjectMapper()
                .readTree(SharedFiles.of("halls/" + hall + "/truth.json").toFile());
    }
}
