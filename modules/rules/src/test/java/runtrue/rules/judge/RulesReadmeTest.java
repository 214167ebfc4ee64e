package runtrue.rules.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runtrue.rules.DropSettings;
import runtrue.rules.Judgement;
import runtrue.rules.Outcome;
import runtrue.rules.RoofSystems;
import runtrue.rules.RuleSet;
import runtrue.rules.RuleSets;
import runtrue.rules.SettingsFiles;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.example.ExampleRun;
import runtrue.rules.example.RuleBook;
import runtrue.rules.example.RuleBooks;
import runtrue.rules.extend.RuleFile;

/** Follows rules/README.md to the letter. */
class RulesReadmeTest {
    private static final Path RULES = Path.of(System.getProperty("runtrue.root"), "rules");

    @TempDir
    Path folder;

    private static List<String> examples() throws IOException {
        Matcher matcher = Pattern.compile("```yaml\\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(RULES.resolve("README.md")));
        List<String> examples = new ArrayList<>();
        while (matcher.find()) {
            examples.add(matcher.group(1));
        }
        return examples;
    }

    /** Steps 1 and 2, by the words of the readme alone. */
    private Path ruleSetOfTheReadme() throws IOException {
        return Files.writeString(
                folder.resolve("ours.yaml"), examples().get(0) + examples().get(1));
    }

    @Test
    void the_examples_of_the_rule_of_the_readme_hold() throws IOException {
        RuleBook book = RuleBooks.load(ruleSetOfTheReadme());
        assertThat(book.without("narrow-strip")).isEmpty();
        assertThat(ExampleRun.of(book))
                .isNotEmpty()
                .allSatisfy(r -> assertThat(r.fault()).isEmpty());
    }

    @Test
    void the_rule_of_the_readme_finds_narrow_strips() throws IOException {
        RuleSet rules = RuleSets.load(ruleSetOfTheReadme());
        DropSettings settings = SettingsFiles.load(Optional.empty(), Optional.empty(), Map.of());
        DropFacts drop = new DropFacts("demo", 1, List.of(), List.of(), false, false);
        TestRoofs good = TestRoofs.gentle();
        TestRoofs narrow = new TestRoofs(5, 10.05, 6, 0.5, good.supports(), good.thickness());
        List<Judgement> judgements =
                Judge.judge(rules, RoofSystems.bundled("kestrel-500"), settings, narrow.roof(), drop);
        assertThat(judgements)
                .filteredOn(j -> j.rule().equals("narrow-strip"))
                .singleElement()
                .satisfies(j -> {
                    assertThat(j.outcome()).isEqualTo(Outcome.DOES_NOT_CONFORM);
                    assertThat(j.message())
                            .isEqualTo("Sheet 21 of plane south is 50 mm wide; we do not fix strips under 100 mm.");
                });
    }

    @Test
    void the_rule_set_of_the_readme_that_changes_another_loads_and_its_examples_hold() throws IOException {
        Path file = Files.writeString(folder.resolve("north-works.yaml"), example("rule_set: north-works"));
        RuleBook book = RuleBooks.load(file);
        assertThat(book.rules().rule("stated-area")).isEmpty();
        assertThat(book.rules().rule("minimum-pitch").orElseThrow().source()).startsWith("Our own practice");
        assertThat(ExampleRun.of(book))
                .isNotEmpty()
                .allSatisfy(r -> assertThat(r.fault()).isEmpty());
    }

    @Test
    void the_settings_of_the_readme_change_the_rule_set_that_they_name() throws IOException {
        Path file = Files.writeString(folder.resolve(SettingsFiles.NAME), example("rule_set: long-run-sheets.yaml"));
        DropSettings settings = SettingsFiles.load(Optional.empty(), Optional.of(file), Map.of());
        assertThat(settings.ruleSet()).isEqualTo("long-run-sheets.yaml");
        RuleSet rules = RuleSets.load(RuleFile.bundled("long-run-sheets"), Optional.of(file));
        assertThat(rules.rule("stated-area")).isEmpty();
        assertThat(rules.version()).endsWith(", changed by the drop's settings, without stated-area");
        assertThat(rules.sources()
                        .origin("rules.minimum-pitch.at least")
                        .orElseThrow()
                        .line())
                .isEqualTo(4);
    }

    private static String example(String start) throws IOException {
        return examples().stream().filter(e -> e.startsWith(start)).findFirst().orElseThrow();
    }

    @Test
    void the_settings_of_the_readme_load() throws IOException {
        Path file = folder.resolve(SettingsFiles.NAME);
        Files.writeString(file, example("system: kestrel-500"));
        DropSettings settings = SettingsFiles.load(Optional.empty(), Optional.of(file), Map.of());
        assertThat(settings.si("uplift.corner")).contains(2400.0);
    }

    @Test
    void the_readme_lists_every_fact() throws IOException {
        String readme = Files.readString(RULES.resolve("README.md"));
        assertThat(FactCatalogue.standard().all())
                .extracting(FactSpec::name)
                .allSatisfy(name -> assertThat(readme).contains("| `" + name + "` |"));
    }
}
