package runtrue.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import runtrue.rules.buildup.BuildUps;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.SchemaCheck;
import runtrue.rules.yaml.YamlFile;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class BundledFilesTest {
    private static final Path RULES = Path.of(System.getProperty("runtrue.root"), "rules");

    private static List<Path> files(String folder) throws IOException {
        try (Stream<Path> files = Files.list(RULES.resolve(folder))) {
            List<Path> all =
                    files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
            assertThat(all).isNotEmpty();
            return all;
        }
    }

    /** The program skips the schema for these very texts, so they must be checked here. */
    private static void check(String folder, String schema) throws IOException {
        String text = Files.readString(RULES.resolve("schemas/" + schema + ".schema.json"));
        for (Path file : files(folder)) {
            Problems problems = new Problems();
            YamlFile.read(file).parse(problems).ifPresent(value -> SchemaCheck.check(value, text, problems));
            assertThatCode(problems::throwIfAny).doesNotThrowAnyException();
        }
    }

    @Test
    void every_rule_set_keeps_its_schema_and_compiles() throws IOException {
        check("rule-sets", "rule-set");
        for (Path file : files("rule-sets")) {
            assertThat(RuleSets.load(file).rules()).isNotEmpty();
        }
    }

    @Test
    void every_roof_system_keeps_its_schema_and_loads() throws IOException {
        check("systems", "roof-system");
        for (Path file : files("systems")) {
            assertThat(RoofSystems.load(file).si("cover_width")).isPresent();
        }
    }

    @Test
    void every_build_up_keeps_its_schema_and_loads() throws IOException {
        check("build-ups", "build-up");
        for (Path file : files("build-ups")) {
            assertThat(BuildUps.load(file).items()).isNotEmpty();
        }
    }

    @Test
    void the_default_settings_keep_their_schema_and_name_a_system_that_is_there() throws IOException {
        check("settings", "settings");
        DropSettings defaults = SettingsFiles.load(Optional.empty(), Optional.empty(), Map.of());
        assertThat(RoofSystems.bundled(defaults.system()).name()).isEqualTo(defaults.system());
    }

    @Test
    void every_system_that_is_invented_says_so() throws IOException {
        for (Path file : files("systems")) {
            assertThat(RoofSystems.load(file).source()).startsWith("Invented for the demo");
        }
    }

    @Test
    void the_schema_of_systems_lists_the_facts_of_the_catalogue() throws IOException {
        JsonNode values = schema("roof-system").at("/properties/values/properties");
        assertThat(new TreeSet<>(values.propertyNames()))
                .isEqualTo(
                        new TreeSet<>(FactCatalogue.standard().group("system").keySet()));
    }

    @Test
    void the_schema_of_settings_lists_the_facts_of_the_catalogue() throws IOException {
        JsonNode properties = schema("settings").at("/properties");
        TreeSet<String> names = new TreeSet<>();
        names(properties, "", names);
        // Zones are named by whoever gives their pressures; selectors and what is changed of rules are no facts.
        names.removeAll(List.of("system", "set_out", "wind.given.zones", "rule_set", "changes", "switched_off"));
        names.removeIf(name -> name.startsWith("selectors."));
        Map<String, FactSpec> known = FactCatalogue.standard().group("settings");
        assertThat(names).isEqualTo(new TreeSet<>(known.keySet()));
    }

    private static void names(JsonNode properties, String above, Set<String> names) {
        for (String name : properties.propertyNames()) {
            JsonNode inner = properties.get(name).path("properties");
            if (inner.isMissingNode()) {
                names.add(above + name);
            } else {
                names(inner, above + name + ".", names);
            }
        }
    }

    private static JsonNode schema(String name) throws IOException {
        return JsonMapper.shared().readTree(Files.readString(RULES.resolve("schemas/" + name + ".schema.json")));
    }
}
