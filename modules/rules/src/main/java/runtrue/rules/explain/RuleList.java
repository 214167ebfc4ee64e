package runtrue.rules.explain;

import java.util.ArrayList;
import java.util.List;
import runtrue.rules.DropSettings;
import runtrue.rules.RoofSystem;
import runtrue.rules.Rule;
import runtrue.rules.RuleSet;
import runtrue.rules.extend.RuleSources;
import runtrue.rules.extend.SwitchedOff;

/** The rules of a set in short: what each is for, what it asks, where the limit comes from, where it stands. */
public final class RuleList {
    private RuleList() {}

    /** Lines of text, those of a rule after its heading indented. */
    public static List<String> of(RuleSet rules, RoofSystem system, DropSettings settings) {
        StatedLimits stated = new StatedLimits(rules, system, settings);
        List<String> lines = new ArrayList<>();
        lines.add(rules.name() + " " + rules.version() + ": " + rules.title());
        lines.add("Limits in brackets: by roof system " + system.name() + " and the settings");
        for (RuleSources.Source source : rules.sources().chain()) {
            lines.add("File " + source.file() + ", version " + source.version() + ", SHA-256 "
                    + source.hash().substring(0, 12));
        }
        for (Rule rule : rules.rules()) {
            lines.add("");
            lines.addAll(rule(rule, rules, stated));
        }
        if (!rules.sources().switchedOff().isEmpty()) {
            lines.add("");
            lines.add("Switched off:");
            for (SwitchedOff off : rules.sources().switchedOff()) {
                lines.add("  " + off.rule() + " (" + off.title() + "): " + off.because() + " ["
                        + off.place().file() + ":" + off.place().line() + "]");
            }
        }
        return lines;
    }

    private static List<String> rule(Rule rule, RuleSet rules, StatedLimits stated) {
        List<String> lines = new ArrayList<>();
        lines.add(rule.id() + "  " + rule.severity().label() + ", for each "
                + rule.kind().label() + ": " + rule.title());
        rule.when().ifPresent(when -> lines.add("    when " + oneLine(when.text())));
        rule.require().ifPresent(required -> lines.add("    required: " + oneLine(required.text())));
        rule.measure().ifPresent(measure -> lines.add("    " + oneLine(measure.text())));
        for (Rule.Limit limit : rule.limits()) {
            lines.add("    " + rule.comparison().label() + " " + stated.text(rule, limit)
                    + (limit.source().isEmpty() ? "" : "; " + limit.source()));
        }
        lines.add("    Source: " + rule.source());
        List<String> places = new ArrayList<>();
        RuleLines.origin(rules, "rules." + rule.id()).ifPresent(places::add);
        rules.sources()
                .changedIn("rules." + rule.id())
                .forEach(place -> places.add("changed at " + place.file() + ":" + place.line()));
        lines.add("    " + String.join(", ", places));
        return lines;
    }

    private static String oneLine(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }
}
