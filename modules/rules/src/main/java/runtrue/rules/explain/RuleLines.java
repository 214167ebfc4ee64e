package runtrue.rules.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.yaml.Place;

/** What the explanations of rules and findings have in common. */
final class RuleLines {
    private RuleLines() {}

    /** What it is called, what it is for, where it stands, and what an extending rule set changed of it. */
    static List<String> heading(Rule rule, RuleSet rules) {
        List<String> lines = new ArrayList<>();
        lines.add(rule.id() + ": " + rule.title() + ", " + rule.severity().label() + ", for each "
                + rule.kind().label());
        lines.add("  Source: " + rule.source());
        lines.add("  Rule set " + rules.name() + " " + rules.version());
        origin(rules, "rules." + rule.id()).ifPresent(where -> lines.add("  Stands at " + where));
        for (Place changed : rules.sources().changedIn("rules." + rule.id())) {
            lines.add("  Changed at " + changed.file() + ":" + changed.line());
        }
        return lines;
    }

    static Optional<String> origin(RuleSet rules, String name) {
        return rules.sources().origin(name).map(place -> place.file() + ":" + place.line());
    }
}
