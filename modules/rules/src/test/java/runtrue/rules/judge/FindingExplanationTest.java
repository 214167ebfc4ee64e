package runtrue.rules.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import runtrue.rules.DropSettings;
import runtrue.rules.Outcome;
import runtrue.rules.RoofSystem;
import runtrue.rules.RoofSystems;
import runtrue.rules.RuleSet;
import runtrue.rules.RuleSets;
import runtrue.rules.SettingsFiles;
import runtrue.rules.explain.Explanation;
import runtrue.rules.explain.FindingExplanation;
import runtrue.rules.judge.subject.Grounds;
import runtrue.rules.units.Quantities;
import runtrue.rules.wind.WindSetting;

class FindingExplanationTest {
    private static final Map<String, String> SITE =
            Map.of("rolled_on_site", "false", "transport_length", "15 m", "temperature_range", "75 K");

    private final RuleSet rules = RuleSets.bundled("long-run-sheets");
    private final RoofSystem system = RoofSystems.bundled("kestrel-500");

    private List<Grounds> grounds(TestRoofs roof, Map<String, String> stated) {
        DropSettings settings = SettingsFiles.load(Optional.empty(), Optional.empty(), stated);
        DropFacts drop = new DropFacts("demo", 1, List.of(), List.of(), false, false);
        Judge judge = Judge.of(rules, system);
        return judge.grounds(
                settings, roof.roof(), drop, judge.zones(settings, WindSetting.of(settings), roof.roof(), drop));
    }

    private Explanation explained(List<Grounds> grounds, String rule) {
        return grounds.stream()
                .filter(g -> g.rule().id().equals(rule))
                .findFirst()
                .map(g -> FindingExplanation.of(rules, system, g))
                .orElseThrow();
    }

    @Test
    void every_judgement_can_be_explained_and_shows_the_figures_that_it_was_made_of() {
        List<Grounds> all = grounds(TestRoofs.gentle(), SITE);
        assertThat(all).isNotEmpty().allSatisfy(g -> {
            String text =
                    String.join("\n", FindingExplanation.of(rules, system, g).lines());
            assertThat(text).contains(g.judgement().outcome().label().substring(1));
            g.judgement().measured().ifPresent(m -> assertThat(text).contains("= " + Quantities.text(m)));
            if (g.judgement().outcome() != Outcome.NOT_ASSESSED) {
                g.judgement().limit().ifPresent(l -> assertThat(text).contains(Quantities.text(l)));
            }
        });
    }

    @Test
    void the_limit_that_governs_is_said() {
        List<Grounds> all = grounds(TestRoofs.gentle(), SITE);
        List<String> lines = explained(all, "unlapped-length").lines();
        int governs = lines.indexOf("     This is the strictest that is known: it governs.");
        assertThat(lines.subList(0, governs))
                .filteredOn(line -> line.startsWith("   at most"))
                .last()
                .asString()
                .contains("settings.transport_length")
                .endsWith("= 15 m");
    }

    @Test
    void a_missing_fact_is_said_with_what_to_do() {
        assertThat(explained(grounds(TestRoofs.gentle(), Map.of()), "unlapped-length")
                        .lines())
                .anyMatch(line ->
                        line.contains("settings.temperature_range = unknown: coldest to hottest sheet; it is not"
                                + " stated; add temperature_range to runtrue.yaml"));
    }
}
