package runtrue.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RuleSetsTest {
    private static final String GOOD = """
            rule_set: mine
            version: "1.0.0"
            title: Mine
            tables:
              limit_of:
                axes:
                  thickness: {unit: mm, points: [0.5, 0.7]}
                unit: mm
                values: [1000, 2000]
                source: Invented for the test.
            rules:
              - id: flat
                title: Flat
                severity: major
                for: plane
                measure: plane.pitch
                unit: deg
                at least: 2 deg
                source: test
                message: "{subject} is {measured}"
            """;

    @TempDir
    Path folder;

    private RuleSet load(String text) throws IOException {
        Path file = folder.resolve("mine.yaml");
        Files.writeString(file, text);
        return RuleSets.load(file);
    }

    private List<String> errors(String text) {
        RuleException error = assertThrows(RuleException.class, () -> load(text));
        return String.valueOf(error.getMessage())
                .lines()
                .map(line -> line.replace(folder + "/", ""))
                .toList();
    }

    @Test
    void a_good_rule_set_loads_with_its_hash() throws IOException {
        RuleSet set = load(GOOD);
        assertThat(set.name()).isEqualTo("mine");
        assertThat(set.hash()).hasSize(64);
        assertThat(set.rule("flat")).isPresent();
    }

    /** A rule that is below, its own, or of a kind that belongs to no one plane cannot tell of a cause. */
    @Test
    void only_a_rule_above_can_tell_of_a_cause() {
        String condition = """
                    not assessed when:
                      - condition: plane.pitch > 0
                        because: it falls
                        told by: flta
                """;

        assertThat(errors(GOOD + condition))
                .singleElement()
                .satisfies(error ->
                        assertThat(error).contains("mine.yaml:24:18: there is no rule \"flta\" above this one"));
    }

    /** Each row changes one piece of the good file; the error must stand where the change was made. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            measure: plane.pitch  | measure: plane.ptich  | mine.yaml:16:14: unknown fact "plane.ptich"; did you mean "plane.pitch"?
            at least: 2 deg       | at least: 2           | mine.yaml:18:15: "2" has no unit; known units: mm
            at least: 2 deg       | at least: 2 mm        | mine.yaml:18:15: "2 mm" is of dimension length; wanted is angle
            at least: 2 deg       | at least: 2 dge       | mine.yaml:18:15: unknown unit "dge"
            at least: 2 deg       | at least: plane.area  | mine.yaml:18:15: the limit is a area
            at least: 2 deg       | at least: tables.limit_of(plane.pitch) | mine.yaml:18:31: axis thickness of table limit_of is a length, this is a angle
            at least: 2 deg       | at leest: 2 deg       | mine.yaml:18:5: unknown key "at leest"; did you mean "at least"?
            severity: major       | severity: huge        | mine.yaml:14:15: "huge" is not allowed here
            for: plane            | for: plain            | mine.yaml:15:10: "plain" is not allowed here
            unit: deg             | unit: mm              | mine.yaml:17:11: the measure is a angle, "mm" is of a length
            is {measured}         | is {mesured}          | mine.yaml:20:28: unknown placeholder {mesured}; did you mean "measured"?
            source: test          | origin: test          | mine.yaml:19:5: unknown key "origin"
            points: [0.5, 0.7]    | points: [0.7, 0.5]    | mine.yaml:7:43: the points of an axis must rise
            values: [1000, 2000]  | values: [1000]        | mine.yaml:9:13: the axes of table limit_of make 2 values, there are 1
            version: "1.0.0"      | version: 1.0          | mine.yaml:2:10: "1.0" is not allowed here
            """)
    void an_error_says_line_column_and_what_to_do(String good, String bad, String message) {
        assertThat(errors(GOOD.replace(good, bad)))
                .anySatisfy(line -> assertThat(line).startsWith(message));
    }

    @Test
    void a_missing_key_is_told_at_its_rule() {
        assertThat(errors(GOOD.replace("    source: test\n", "")))
                .anySatisfy(line -> assertThat(line).startsWith("mine.yaml:12:5: \"source\" is missing here"));
    }

    @Test
    void all_errors_come_at_once_in_the_order_of_the_file() {
        String bad =
                GOOD.replace("plane.pitch", "plane.pich").replace("2 deg", "2").replace("is {measured}", "is {x}");
        assertThat(errors(bad))
                .satisfiesExactly(
                        first -> assertThat(first).startsWith("mine.yaml:16:14:"),
                        second -> assertThat(second).startsWith("mine.yaml:18:15:"),
                        third -> assertThat(third).startsWith("mine.yaml:20:28:"));
    }

    @Test
    void a_rule_with_neither_a_limit_nor_a_requirement_is_refused() {
        assertThat(errors(GOOD.replace("    at least: 2 deg\n", "")))
                .containsExactly("mine.yaml:12:5: \"at least\" or \"at most\" is missing here");
    }

    @Test
    void a_rule_that_both_measures_and_requires_is_refused() {
        assertThat(errors(GOOD.replace("    at least: 2 deg\n", "    at least: 2 deg\n    require: \"true\"\n")))
                .anySatisfy(line -> assertThat(line).contains("exclude each other"));
    }

    @Test
    void two_rules_of_one_id_are_refused() {
        String rule = GOOD.substring(GOOD.indexOf("  - id: flat"));
        assertThat(errors(GOOD + rule)).containsExactly("mine.yaml:21:9: there is a rule \"flat\" already");
    }

    @Test
    void a_definition_is_offered_only_where_its_facts_are() {
        String definitions = """
                definitions:
                  twice:
                    value: 2 * span.length
                    unit: m
                rules:""";
        assertThat(errors(
                        GOOD.replace("rules:", definitions).replace("measure: plane.pitch", "measure: defined.twice")))
                .anySatisfy(line -> assertThat(line).contains("unknown fact \"defined.twice\""));
    }

    @Test
    void a_file_that_is_not_there_is_one_clear_error() {
        assertThatThrownBy(() -> RuleSets.load(folder.resolve("none.yaml")))
                .isInstanceOf(RuleException.class)
                .hasMessageContaining("none.yaml: cannot be read");
    }

    @Test
    void a_bundled_name_that_is_not_there_is_one_clear_error() {
        assertThatThrownBy(() -> RuleSets.bundled("none"))
                .hasMessage("rules/rule-sets/none.yaml does not come with the program");
    }
}
