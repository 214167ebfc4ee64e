package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runtrue.result.Finding;
import runtrue.result.Outcome;
import runtrue.result.json.ResultJson;
import runtrue.rules.Rule;
import runtrue.rules.RuleSets;

/** Whoever looks at the samples sees each rule at work: it finds something in one of them, on purpose. */
class EveryRuleFiresTest {
    private static final Path ROOT = Path.of(System.getProperty("runtrue.root", "../.."));

    /** Rules that no sample is made for, and why; their examples stand beside the rule set. */
    private static final Map<String, String> NOWHERE = Map.of(
            "roof-found", "a sample without a roof would show nothing else",
            "unread-located", "takes a member whose extent cannot be told, which a valid file hardly has",
            "system-information", "the demo systems state all of it",
            "support-sections", "takes purlins without sections",
            "purlin-lap-stated", "the sample with lapped purlins states it, so that the lap is judged");

    /** Rules that can do no more than not assess. */
    private static final List<String> NEVER_BREACHED = List.of(
            "settings-information", "support-materials", "unread-element", "element-without-plane", "plane-thickness");

    private static final TreeSet<String> BREACHED = new TreeSet<>();
    private static final TreeSet<String> NOT_ASSESSED = new TreeSet<>();

    @BeforeAll
    static void check(@TempDir Path output) throws IOException {
        CommandRun.of(
                options -> ModelCheck.with(options, Instant.EPOCH),
                "check",
                ROOT.resolve("sample-models").toString(),
                "--output",
                output.toString());
        try (Stream<Path> drops = Files.list(output)) {
            for (Path drop : drops.filter(Files::isDirectory).toList()) {
                for (Finding finding :
                        ResultJson.read(drop.resolve("result.json")).findings()) {
                    (finding.outcome() == Outcome.DOES_NOT_CONFORM ? BREACHED : NOT_ASSESSED).add(finding.rule());
                }
            }
        }
    }

    static Stream<String> rules() {
        return RuleSets.bundled("long-run-sheets").rules().stream().map(Rule::id);
    }

    @ParameterizedTest
    @MethodSource("rules")
    void it_finds_something_in_a_sample(String rule) {
        if (NOWHERE.containsKey(rule)) {
            assertThat(BREACHED).doesNotContain(rule);
        } else {
            assertThat(NEVER_BREACHED.contains(rule) ? NOT_ASSESSED : BREACHED).contains(rule);
        }
    }

    @Test
    void what_is_excepted_is_in_the_rule_set() {
        assertThat(rules()).containsAll(NOWHERE.keySet()).containsAll(NEVER_BREACHED);
    }
}
