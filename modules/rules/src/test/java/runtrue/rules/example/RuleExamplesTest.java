package runtrue.rules.example;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import runtrue.rules.Rule;

/** The examples of all rule sets that come with the program. */
class RuleExamplesTest {
    private static final Path FOLDER = Path.of(System.getProperty("runtrue.root"), "rules", "rule-sets");

    private static List<RuleBook> books() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<RuleBook> books = files.filter(f -> f.toString().endsWith(".yaml"))
                    .sorted()
                    .map(RuleBooks::load)
                    .toList();
            assertThat(books).isNotEmpty();
            return books;
        }
    }

    @TestFactory
    Stream<DynamicTest> every_example_holds() throws IOException {
        return books().stream()
                .flatMap(book -> ExampleRun.of(book).stream())
                .map(result -> dynamicTest(
                        result.example().name(),
                        () -> assertThat(result.fault())
                                .as(String.valueOf(result.example().place()))
                                .isEmpty()));
    }

    @Test
    void every_rule_has_an_example_of_each_outcome_or_says_why_it_never_comes_to_it() throws IOException {
        for (RuleBook book : books()) {
            assertThat(book.rules().rules())
                    .extracting(Rule::id)
                    .allSatisfy(rule -> assertThat(book.without(rule)).as(rule).isEmpty());
        }
    }

    @Test
    void the_program_brings_its_examples_along() throws IOException {
        assertThat(RuleBooks.bundled("long-run-sheets").examples())
                .hasSameSizeAs(
                        RuleBooks.load(FOLDER.resolve("long-run-sheets.yaml")).examples());
    }
}
