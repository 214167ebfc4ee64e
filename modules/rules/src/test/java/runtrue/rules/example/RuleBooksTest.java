package runtrue.rules.example;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.rules.RuleException;

class RuleBooksTest {
    private static final String SET = """
            rule_set: mine
            version: "1.0.0"
            title: Mine
            tables:
              own:
                axes:
                  thickness: {unit: mm, points: [0.5, 0.7]}
                unit: mm
                values: [1000, 2000]
                source: Invented for the test.
              span:
                from: system
                axes:
                  thickness: {unit: mm}
                unit: mm
            rules:
              - id: narrow
                title: Narrow
                severity: minor
                for: sheet
                when: sheet.trimmed
                measure: sheet.width
                unit: mm
                at least:
                  - limit: 100 mm
                  - limit: tables.span(system.thickness)
                  - limit: tables.own(system.thickness) / 10
                source: test
                message: "{subject} is {measured}"
                examples:
                  given: {sheet.trimmed: true, system.thickness: 0.7 mm, tables.span: 80 mm}
            """;

    @TempDir
    Path folder;

    private RuleBook load(String examples) throws IOException {
        Path file = folder.resolve("mine.yaml");
        Files.writeString(file, SET + examples.indent(6));
        return RuleBooks.load(file);
    }

    private List<ExampleResult> results(String examples) throws IOException {
        return ExampleRun.of(load(examples));
    }

    private List<String> errors(String examples) {
        RuleException error = assertThrows(RuleException.class, () -> load(examples));
        return String.valueOf(error.getMessage())
                .lines()
                .map(line -> line.replace(folder + "/", ""))
                .toList();
    }

    @Test
    void an_example_that_holds_says_nothing() throws IOException {
        assertThat(results("conforms: [{sheet.width: 300 mm, limit: 200 mm}]"))
                .singleElement()
                .satisfies(r -> assertThat(r.fault()).isEmpty());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            conforms: [{sheet.width: 80 mm}]                    | stated is "conforms", the rule says "does not conform": 80 mm against 200 mm
            does not conform: [{sheet.width: 0.3 m}]            | stated is "does not conform", the rule says "conforms": 300 mm against 200 mm
            not assessed: [{sheet.width: 300 mm}]               | stated is "not assessed", the rule says "conforms": 300 mm against 200 mm
            conforms: [{system.thickness: 0.5 mm}]              | stated is "conforms", the rule says "not assessed": sheet.width is not stated by the example
            does not apply: [{sheet.width: 80 mm}]              | stated is "does not apply", the rule says "does not conform": 80 mm against 200 mm
            conforms: [{sheet.trimmed: false}]                  | stated is "conforms", the rule says "does not apply"
            conforms: [{sheet.width: 300 mm, limit: 100 mm}]    | the limit stated is 100 mm, the rule's is 200 mm
            not assessed: [{because: thickness}]                | the reason does not hold "thickness"; it is: sheet.width is not stated by the example
            """)
    void an_example_that_does_not_hold_says_why(String example, String fault) throws IOException {
        assertThat(results(example)).singleElement().satisfies(r -> {
            assertThat(r.holds()).isFalse();
            assertThat(r.fault()).isEqualTo(fault);
        });
    }

    @Test
    void a_fact_that_is_given_can_be_taken_back() throws IOException {
        assertThat(results("not assessed: [{sheet.width: 300 mm, tables.span: not stated, because: tables.span}]"))
                .singleElement()
                .satisfies(r -> assertThat(r.fault()).isEmpty());
    }

    @Test
    void a_table_with_values_of_its_own_answers_as_it_does_in_a_check() throws IOException {
        assertThat(results("conforms: [{sheet.width: 300 mm, system.thickness: 0.5 mm, limit: 100 mm}]"))
                .singleElement()
                .satisfies(r -> assertThat(r.fault()).isEmpty());
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            conforms: [{sheet.widht: 80 mm}]     | mine.yaml:32:19: unknown fact "sheet.widht" in an example of rule "narrow", which is for the sheet; did you mean "sheet.width"? Known here: sheet.area
            conforms: [{span.length: 80 mm}]     | mine.yaml:32:19: unknown fact "span.length" in an example of rule "narrow", which is for the sheet
            conforms: [{tables.own: 80 mm}]      | mine.yaml:32:19: unknown fact "tables.own" in an example of rule "narrow", which is for the sheet; did you mean "tables.span"?
            conforms: [{sheet.width: 80}]        | mine.yaml:32:32: "80" has no unit
            conforms: [{sheet.width: 80 kPa}]    | mine.yaml:32:32: "80 kPa" is of dimension pressure; wanted is length
            conforms: [{sheet.trimmed: perhaps}] | mine.yaml:32:34: sheet.trimmed is true or false, not "perhaps"
            conform: [{sheet.width: 80 mm}]      | mine.yaml:32:7: unknown key "conform"; did you mean "conforms"?
            conforms: [{limits: 80 mm}]          | mine.yaml:32:19: unknown fact "limits" in an example of rule "narrow", which is for the sheet; did you mean "limit"?
            """)
    void what_is_wrong_with_an_example_is_told_with_its_place(String example, String error) {
        assertThat(errors(example)).singleElement().satisfies(e -> assertThat(e).startsWith(error));
    }

    @Test
    void examples_may_stand_in_a_file_beside_the_rule_set() throws IOException {
        Files.createDirectories(folder.resolve("examples"));
        Path rules = folder.resolve("mine.yaml");
        Files.writeString(rules, SET.replaceAll("(?s)    examples:.*", ""));
        Files.writeString(folder.resolve("examples/mine.yaml"), """
                examples:
                  narrow:
                    conforms: [{sheet.trimmed: true, sheet.width: 300 mm, system.thickness: 0.7 mm, tables.span: 80 mm}]
                    not assessed: A sheet always has a width.
                """);
        RuleBook book = RuleBooks.load(rules);
        assertThat(ExampleRun.of(book))
                .singleElement()
                .satisfies(r -> assertThat(r.holds()).isTrue());
        assertThat(book.without("narrow")).containsExactly(Expected.DOES_NOT_CONFORM);
    }

    @Test
    void a_file_of_examples_for_a_rule_that_is_not_there_is_an_error() throws IOException {
        Files.createDirectories(folder.resolve("examples"));
        Files.writeString(folder.resolve("examples/mine.yaml"), """
                examples:
                  narow:
                    conforms: [{sheet.trimmed: true}]
                """);
        assertThat(errors(""))
                .singleElement()
                .satisfies(e -> assertThat(e)
                        .isEqualTo("examples/mine.yaml:2:3: there is no rule \"narow\"; did you mean \"narrow\"?"));
    }
}
