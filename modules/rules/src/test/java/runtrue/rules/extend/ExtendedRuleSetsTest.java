package runtrue.rules.extend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.rules.Rule;
import runtrue.rules.RuleException;
import runtrue.rules.RuleSet;
import runtrue.rules.RuleSets;
import runtrue.rules.Severity;
import runtrue.rules.cel.Expression;
import runtrue.rules.example.ExampleRun;
import runtrue.rules.example.RuleBook;
import runtrue.rules.example.RuleBooks;

class ExtendedRuleSetsTest {
    private static final String BASE = """
            rule_set: base
            version: "0.3.0"
            title: Base
            edge_zone:
              width: 0.1 * building.plan_width
              source: test
            definitions:
              share: {value: "0.5", unit: 1}
              reach: {value: "defined.share * 4", unit: 1}
            tables:
              span:
                axes:
                  thickness: {unit: mm, points: [0.5, 0.7]}
                unit: mm
                between points: linear
                values: [1000, 2000]
                source: Invented for the test.
            rules:
              - id: found
                title: Found
                severity: major
                for: plane
                measure: plane.support_lines
                unit: pcs
                at least: 2 pcs
                source: test
                message: "{measured}"
              - id: flat
                title: Flat
                severity: major
                for: plane
                not assessed when:
                  - condition: plane.support_lines < 1
                    because: none
                    told by: found
                measure: plane.pitch
                unit: deg
                at least: 2 deg
                source: test
                message: "{subject} is {measured}"
                examples:
                  given: {plane.support_lines: 3}
                  conforms: [{plane.pitch: 2.5 deg}]
              - id: span
                title: Span
                severity: minor
                for: span
                measure: span.length
                unit: mm
                at most: tables.span(system.thickness)
                source: test
                message: "{measured}"
            """;

    private static final String HEAD = """
            rule_set: ours
            version: "1.0.0"
            title: Ours
            extends: base.yaml
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void writeBase() throws IOException {
        write("base.yaml", BASE);
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    private RuleSet load(String text) throws IOException {
        return RuleSets.load(write("ours.yaml", HEAD + text));
    }

    private String errors(String text) throws IOException {
        write("ours.yaml", HEAD + text);
        RuleException error = assertThrows(RuleException.class, () -> RuleSets.load(folder.resolve("ours.yaml")));
        return String.valueOf(error.getMessage()).replace(folder + "/", "");
    }

    private String origin(RuleSet set, String name) {
        return set.sources().origin(name).orElseThrow().toString().replace(folder + "/", "");
    }

    private static Rule rule(RuleSet set, String id) {
        return set.rule(id).orElseThrow();
    }

    @Test
    void all_that_is_not_changed_is_taken_over() throws IOException {
        RuleSet set = load("");
        assertThat(set.rules()).extracting(Rule::id).containsExactly("found", "flat", "span");
        assertThat(set.edgeZoneWidth()).isPresent();
        assertThat(set.name()).isEqualTo("ours");
        assertThat(set.title()).isEqualTo("Ours");
    }

    @Test
    void single_keys_of_a_rule_are_changed_and_keep_their_places() throws IOException {
        RuleSet set = load("""
                changes:
                  rules:
                    flat:
                      severity: critical
                      at least: 3 deg
                      source: Our own practice
                """);
        assertThat(rule(set, "flat").severity()).isEqualTo(Severity.CRITICAL);
        assertThat(rule(set, "flat").limits().get(0).fixed().orElseThrow().si()).isEqualTo(Math.toRadians(3));
        assertThat(rule(set, "flat").source()).isEqualTo("Our own practice");
        assertThat(origin(set, "rules.flat.at least")).isEqualTo("ours.yaml:9:7");
        assertThat(origin(set, "rules.flat.measure")).isEqualTo("base.yaml:36:5");
        assertThat(origin(set, "rules.flat")).isEqualTo("base.yaml:28:5");
    }

    @Test
    void a_limit_on_the_other_side_takes_the_place_of_the_one_there() throws IOException {
        RuleSet set = load("""
                changes: {rules: {flat: {at most: 10 deg, source: Ours}}}
                """);
        assertThat(rule(set, "flat").comparison()).isEqualTo(Rule.Comparison.AT_MOST);
    }

    @Test
    void a_requirement_takes_the_place_of_a_measure() throws IOException {
        RuleSet set = load("""
                changes: {rules: {flat: {require: plane.pitch > 0, source: Ours}}}
                """);
        assertThat(rule(set, "flat").measure()).isEmpty();
        assertThat(rule(set, "flat").require()).isPresent();
    }

    @Test
    void a_definition_keeps_the_keys_that_are_not_changed() throws IOException {
        RuleSet set = load("""
                changes:
                  definitions: {share: {value: "0.25"}}
                definitions:
                  longer: {value: defined.reach * 2, unit: 1}
                """);
        assertThat(set.definitions()).containsKeys("share", "reach", "longer");
        assertThat(set.definitions())
                .extractingByKey("share")
                .extracting(Expression::text)
                .isEqualTo("0.25");
        assertThat(origin(set, "definitions.share.value")).isEqualTo("ours.yaml:6:25");
        assertThat(origin(set, "definitions.share.unit")).isEqualTo("base.yaml:8:25");
    }

    @Test
    void values_of_a_table_are_changed_on_its_axes() throws IOException {
        RuleSet set = load("""
                changes: {tables: {span: {values: [1100, 2200], source: Ours}}}
                """);
        assertThat(set.ownTables())
                .extractingByKey("span")
                .extracting(t -> t.at(0.0006))
                .isEqualTo(1.65);
    }

    @Test
    void a_table_with_axes_of_its_own_stands_for_itself() throws IOException {
        RuleSet set = load("""
                changes:
                  tables:
                    span: {from: system, axes: {thickness: {unit: mm}}, unit: mm}
                """);
        assertThat(set.ownTables()).isEmpty();
    }

    @Test
    void a_rule_that_is_switched_off_is_told_with_its_reason() throws IOException {
        RuleSet set = load("""
                switched_off: {found: the steelwork comes later}
                """);
        assertThat(set.rule("found")).isEmpty();
        assertThat(set.sources().switchedOff()).singleElement().satisfies(off -> {
            assertThat(off.rule()).isEqualTo("found");
            assertThat(off.title()).isEqualTo("Found");
            assertThat(off.because()).isEqualTo("the steelwork comes later");
        });
        assertThat(set.version()).isEqualTo("1.0.0 on base 0.3.0, without found");
    }

    /** Else the cause would be told by nobody. */
    @Test
    void what_a_rule_switched_off_would_have_told_is_told_by_the_others() throws IOException {
        RuleSet set = load("switched_off: {found: later}\n");
        assertThat(rule(set, "flat").unassessable().get(0).toldBy()).isEmpty();
    }

    @Test
    void rules_are_added_after_those_that_are_there() throws IOException {
        RuleSet set = load("""
                rules:
                  - id: steep
                    title: Steep
                    severity: note
                    for: plane
                    require: plane.pitch < quantity("60 deg")
                    source: Ours
                    message: steep
                """);
        assertThat(set.rules()).extracting(Rule::id).containsExactly("found", "flat", "span", "steep");
        assertThat(origin(set, "rules.steep")).isEqualTo("ours.yaml:6:5");
    }

    @Test
    void a_chain_of_three_applies_the_last_change() throws IOException {
        load("changes: {rules: {flat: {at least: 3 deg, source: Ours}}}\n");
        Path third = write("project.yaml", """
                rule_set: project
                version: "2.1.0"
                title: Project
                extends: ours.yaml
                changes: {rules: {flat: {at least: 4 deg, source: Project}}}
                """);
        RuleSet set = RuleSets.load(third);
        assertThat(rule(set, "flat").limits().get(0).fixed().orElseThrow().si()).isEqualTo(Math.toRadians(4));
        assertThat(set.version()).isEqualTo("2.1.0 on ours 1.0.0 on base 0.3.0");
        assertThat(set.sources().chain())
                .extracting(RuleSources.Source::name)
                .containsExactly("base", "ours", "project");
    }

    @Test
    void the_hash_changes_with_any_file_of_the_chain() throws IOException {
        String before = load("").hash();
        write("base.yaml", BASE + "# a word more\n");
        assertThat(load("").hash()).hasSize(64).isNotEqualTo(before);
        assertThat(RuleSets.load(folder.resolve("base.yaml")).hash()).isNotEqualTo(before);
    }

    @Test
    void a_rule_set_of_the_program_can_be_extended_from_anywhere() throws IOException {
        RuleSet set = RuleSets.load(write("far.yaml", HEAD.replace("base.yaml", "long-run-sheets.yaml")));
        assertThat(set.rule("minimum-pitch")).isPresent();
    }

    @Test
    void those_in_the_folder_of_the_program_go_before_those_inside_it() throws IOException {
        Path home = Files.createDirectory(folder.resolve("home"));
        Files.writeString(home.resolve("long-run-sheets.yaml"), BASE);
        Path ours = write("far.yaml", HEAD.replace("base.yaml", "long-run-sheets.yaml"));
        assertThat(RuleSets.load(RuleFile.of(ours, Optional.of(home)), Optional.empty())
                        .rule("minimum-pitch"))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            changes: {rules: {flta: {severity: note}}}                  | ours.yaml:5:19: there is no rule "flta" to change; did you mean "flat"?
            changes: {rules: {flat: {sevrity: note}}}                   | ours.yaml:5:26: unknown key "sevrity"; did you mean "severity"?
            changes: {rules: {flat: {id: other}}}                       | ours.yaml:5:26: unknown key "id"
            changes: {rules: {flat: {at least: 3 deg}}}                 | ours.yaml:5:25: "source" is missing here
            changes: {rules: {flat: {at least: 3 mm, source: x}}}       | ours.yaml:5:36: "3 mm" is of dimension length; wanted is angle
            changes: {rules: {flat: {when: plane.pich > 0.0}}}          | ours.yaml:5:32: unknown fact "plane.pich"; did you mean "plane.pitch"?
            changes: {definitions: {shar: {value: "1"}}}                | ours.yaml:5:25: there is no definition "shar" to change; did you mean "share"?
            changes: {definitions: {share: {valeu: "1"}}}               | ours.yaml:5:33: unknown key "valeu"; did you mean "value"?
            changes: {tables: {spam: {values: [1], source: x}}}         | ours.yaml:5:20: there is no table "spam" to change; did you mean "span"?
            changes: {tables: {span: {values: [1], source: x}}}         | ours.yaml:5:35: the axes of table span make 2 values, there are 1
            changes: {table: {}}                                        | ours.yaml:5:11: unknown key "table"; did you mean "tables"?
            change: {}                                                  | ours.yaml:5:1: unknown key "change"; did you mean "changes"?
            switched_off: {fond: never}                                 | ours.yaml:5:16: there is no rule "fond" to switch off; did you mean "found"?
            switched_off: {found: ""}                                   | ours.yaml:5:23: "" is not allowed here
            definitions: {share: {value: "1", unit: 1}}                 | ours.yaml:5:15: there is a definition "share" already, at base.yaml:8:3; to change it, put it under changes
            edge_zone: {width: 1 * building.plan_width, source: x}      | ours.yaml:5:1: there is an edge_zone already, at base.yaml:4:1
            """)
    void what_is_wrong_with_a_change_is_told_with_its_place(String text, String error) throws IOException {
        assertThat(errors(text + "\n")).startsWith(error);
    }

    @Test
    void a_rule_cannot_be_added_twice() throws IOException {
        assertThat(errors(BASE.substring(BASE.indexOf("rules:"))))
                .contains("ours.yaml:6:9: the extended rule set has a rule \"found\"; to change it");
    }

    @Test
    void a_rule_that_is_switched_off_cannot_be_changed_as_well() throws IOException {
        assertThat(errors("switched_off: {flat: later}\nchanges: {rules: {flat: {severity: note}}}\n"))
                .isEqualTo("ours.yaml:6:19: there is no rule \"flat\" to change: it is switched off");
    }

    @Test
    void a_circle_is_an_error_that_names_its_files() throws IOException {
        write("base.yaml", HEAD.replace("base.yaml", "ours.yaml"));
        assertThat(errors(""))
                .isEqualTo(
                        "base.yaml:4:10: a rule set cannot extend itself: ours.yaml extends base.yaml extends ours.yaml");
    }

    @Test
    void a_rule_set_that_is_not_there_is_an_error() throws IOException {
        write("ours.yaml", HEAD.replace("base.yaml", "bass.yaml"));
        RuleException error = assertThrows(RuleException.class, () -> RuleSets.load(folder.resolve("ours.yaml")));
        assertThat(error).hasMessageContaining("ours.yaml:4:10: there is no rule set \"bass.yaml\" beside this file");
    }

    @Test
    void changes_need_something_to_change() throws IOException {
        write("ours.yaml", BASE + "switched_off: {flat: later}\n");
        RuleException error = assertThrows(RuleException.class, () -> RuleSets.load(folder.resolve("ours.yaml")));
        assertThat(error).hasMessageEndingWith("ours.yaml:1:1: \"extends\" is missing here");
    }

    @Test
    void an_inherited_example_that_a_change_breaks_says_what_was_changed() throws IOException {
        load("changes: {rules: {flat: {at least: 3 deg, source: Ours}}}\n");
        RuleBook book = RuleBooks.load(folder.resolve("ours.yaml"));
        assertThat(ExampleRun.of(book))
                .singleElement()
                .satisfies(r -> assertThat(r.fault().replace(folder + "/", ""))
                        .isEqualTo(
                                "stated is \"conforms\", the rule says \"does not conform\": 2.5 deg against 3 deg. It is changed at"
                                        + " ours.yaml:5:26; give rule flat examples of its own there"));
    }

    @Test
    void examples_beside_a_change_stand_in_for_the_inherited_ones() throws IOException {
        load("""
                changes:
                  rules:
                    flat:
                      at least: 3 deg
                      source: Ours
                      examples: {conforms: [{plane.support_lines: 3, plane.pitch: 3.5 deg}]}
                """);
        assertThat(ExampleRun.of(RuleBooks.load(folder.resolve("ours.yaml"))))
                .singleElement()
                .satisfies(r -> assertThat(r.fault()).isEmpty());
    }
}
