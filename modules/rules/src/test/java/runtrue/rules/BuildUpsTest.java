package runtrue.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.buildup.BuildUpItem;
import runtrue.rules.buildup.BuildUps;
import runtrue.rules.buildup.CountedOn;
import runtrue.rules.buildup.LayoutFacts;

class BuildUpsTest {
    @TempDir
    Path folder;

    private static String item(String rest) {
        return """
                build_up: ours
                title: Ours
                source: Invented for the demo
                values:
                  pitch: 600 mm
                items:
                  - id: screw
                    name: Screw
                    section: Fixings
                """ + rest.indent(4) + "    source: Invented for the demo\n";
    }

    private BuildUp load(String text) throws IOException {
        Path file = folder.resolve("ours.yaml");
        Files.writeString(file, text);
        return BuildUps.load(file);
    }

    @ParameterizedTest
    @ValueSource(strings = {"single-skin", "double-skin"})
    void build_ups_of_the_program_load_and_say_that_they_are_invented(String name) {
        BuildUp buildUp = BuildUps.bundled(name);
        assertThat(buildUp.name()).isEqualTo(name);
        assertThat(buildUp.source()).startsWith("Invented for the demo");
        assertThat(buildUp.items()).allSatisfy(i -> assertThat(i.source()).isNotBlank());
        assertThat(buildUp.item("clip").orElseThrow().on()).isEqualTo(CountedOn.RIB_ON_SUPPORT);
    }

    @Test
    void the_build_up_that_each_system_names_is_there() {
        for (String system : new String[] {"kestrel-500", "dunlin-400"}) {
            String name = RoofSystems.bundled(system).texts().get("build_up");
            assertThat(BuildUps.bundled(String.valueOf(name)).items()).isNotEmpty();
        }
    }

    @Test
    void an_item_is_read_with_its_unit_packs_and_waste() throws IOException {
        BuildUpItem screw = load(item("""
                kind: pack
                for: support line on plane
                quantity: ceil(support.length / build_up.pitch) + 1
                unit: pcs
                pack: {holds: 500 pcs, word: box}
                waste: {share: 2 %, reason: dropped}
                mass: 0.006 kg
                """)).items().get(0);
        assertThat(screw.packing().orElseThrow().holds()).isEqualTo(500);
        assertThat(screw.waste().orElseThrow().share()).isEqualTo(0.02);
        assertThat(screw.mass().orElseThrow().fixed().orElseThrow().si()).isEqualTo(0.006);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "support.lenght / build_up.pitch | ours.yaml:12:15: unknown fact \"support.lenght\"; did you mean \"support.length\"?",
                "support.length | ours.yaml:12:15: gives a length; wanted is a plain number",
                "support.length + 1 | a length and a plain number do not go together",
                "build_up.pich | did you mean \"build_up.pitch\"?",
                "edge.length / build_up.pitch | unknown fact \"edge.length\"",
                "ceil(support.length) | ceil takes a plain number, this is a length"
            })
    void a_mistake_in_an_expression_is_told_with_its_place(String quantity, String message) {
        assertThatThrownBy(() ->
                        load(item("kind: piece\nfor: support line on plane\nquantity: " + quantity + "\nunit: pcs\n")))
                .isInstanceOf(RuleException.class)
                .hasMessageContaining(message);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kind: roll, for: plane, quantity: plane.area, unit: m2 | \"roll\" is missing here",
                "kind: piece, for: edge, quantity: 1 pcs, unit: pcs | \"edges\" is missing here",
                "kind: piece, for: ribs, quantity: 1 pcs, unit: pcs | \"ribs\" is not allowed here",
                "kind: length, for: plane, quantity: plane.width_across, unit: m, stock: 100 mm, lap: 100 mm | the lap is as wide",
                "kind: length, for: plane, quantity: plane.width_across, unit: m, stok: 3 m | did you mean \"stock\"?",
                "kind: piece, for: plane, quantity: 1 pcs, unit: pcs, mass: 2 kg/m | wanted is mass"
            })
    void a_mistake_in_an_item_is_told(String keys, String message) {
        assertThatThrownBy(() -> load(item(keys.replace(", ", "\n") + "\n")))
                .isInstanceOf(RuleException.class)
                .hasMessageContaining(message);
    }

    @Test
    void the_readme_lists_every_layout_fact() throws IOException {
        String readme = Files.readString(Path.of(System.getProperty("runtrue.root"), "rules", "README.md"));
        assertThat(LayoutFacts.standard().ofLayout())
                .allSatisfy(fact -> assertThat(readme).contains("| `" + fact.name() + "` |"));
    }
}
