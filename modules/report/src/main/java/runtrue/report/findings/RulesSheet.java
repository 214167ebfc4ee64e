package runtrue.report.findings;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.Counts.Outcomes;
import runtrue.result.RuleSetInfo.Rule;

/** One row a rule with its outcomes; also rules that met no subject. */
final class RulesSheet {
    static final String NAME = "Rules";

    private RulesSheet() {}

    static Page page(CheckResult result) {
        Map<String, Outcomes> byRule = new HashMap<>();
        result.counts().rules().forEach(r -> byRule.put(r.rule(), r.outcomes()));
        List<Counted> rules = result.ruleSet().rules().stream()
                .map(r -> new Counted(r, byRule.getOrDefault(r.id(), new Outcomes(0, 0, 0, 0))))
                .toList();
        return new Table<>(NAME, 2, columns(), rules, "The rule set has no rule.").page();
    }

    private static List<Column<Counted>> columns() {
        return List.of(
                Column.text("Rule id", 28, c -> c.rule().id()),
                Column.wrapped("Title", 50, c -> c.rule().title()),
                Column.text("Severity", 12, c -> c.rule().severity().label()),
                Column.<Counted>count("✗ Does not conform", c -> c.outcomes().doesNotConform())
                        .wide(14),
                Column.<Counted>count("? Not assessed", c -> c.outcomes().notAssessed())
                        .wide(14),
                Column.<Counted>count("△ Conceded", c -> c.outcomes().conceded())
                        .wide(14),
                Column.<Counted>count("✓ Conforms", c -> c.outcomes().conforms())
                        .wide(14),
                Column.<Counted>count("Subjects", c -> c.outcomes().all()).wide(14));
    }

    private record Counted(Rule rule, Outcomes outcomes) {}
}
