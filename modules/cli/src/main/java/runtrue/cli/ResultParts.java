package runtrue.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import runtrue.geometryserver.Comparison;
import runtrue.result.CheckResult;
import runtrue.result.RuleSetInfo;
import runtrue.result.Setting;
import runtrue.result.Severity;
import runtrue.result.UnreadElement;
import runtrue.result.change.ChangeKind;
import runtrue.result.change.Changes;
import runtrue.roof.read.DropElements;
import runtrue.rules.DropSettings;
import runtrue.rules.RuleSet;
import runtrue.rules.units.Quantities;

/** Parts of a result that come straight from settings, rules and reading. */
public final class ResultParts {
    private ResultParts() {}

    /** What a result says of the rule set. */
    public static RuleSetInfo ruleSet(RuleSet rules) {
        return new RuleSetInfo(
                rules.name(),
                rules.version(),
                rules.file(),
                rules.hash(),
                rules.rules().stream()
                        .map(r -> new RuleSetInfo.Rule(
                                r.id(), r.title(), Severity.valueOf(r.severity().name())))
                        .toList());
    }

    /** Settings in force by name. */
    public static List<Setting> settings(DropSettings settings) {
        Map<String, String> values = new TreeMap<>();
        settings.values().forEach((name, quantity) -> values.put(name, Quantities.text(quantity)));
        values.putAll(settings.texts());
        settings.switches().forEach((name, on) -> values.put(name, on ? "yes" : "no"));
        values.put("system", settings.system());
        values.put("set_out", settings.setOut().name().toLowerCase(Locale.ROOT));
        List<Setting> list = new ArrayList<>();
        values.forEach((name, value) ->
                list.add(setting(name, value, settings.origins().getOrDefault(name, ""))));
        return list;
    }

    private static Setting setting(String name, String value, String origin) {
        if (origin.equals("command line")) {
            return new Setting(name, value, Setting.Origin.COMMAND_LINE, "");
        }
        boolean ofDefaults = origin.isEmpty() || origin.startsWith("rules/settings/");
        return ofDefaults
                ? new Setting(name, value, Setting.Origin.DEFAULT, "")
                : new Setting(name, value, Setting.Origin.FILE, origin);
    }

    /** Roof elements and members whose shape could not be read. */
    public static List<UnreadElement> unread(DropElements elements) {
        return elements.unread().stream()
                .map(u -> new UnreadElement(
                        u.element().globalId(),
                        u.element().name(),
                        u.element().ifcClass(),
                        u.element().file(),
                        u.element().stepId(),
                        u.element().storey(),
                        u.roof() ? "roof" : "member",
                        u.why().representation(),
                        u.why().reason()))
                .toList();
    }

    /** What a person asked for with {@code --geometry compare}; nothing when no element was compared. */
    static List<String> comparison(List<Comparison> compared) {
        List<String> lines = new ArrayList<>();
        for (Comparison comparison : compared) {
            if (!comparison.differences().isEmpty()) {
                lines.add(comparison.file() + ": " + comparison.sentence());
            }
        }
        if (!compared.isEmpty()) {
            lines.add(
                    0,
                    "elements read by both geometry engines: " + compared.size() + ", of these differing by more than "
                            + Comparison.Tolerance.standard().text() + ": " + lines.size());
        }
        return lines;
    }

    /** What a person sees of what is different since an earlier check. */
    static String changes(Changes changes) {
        return "since the check of " + changes.earlierRunStamp() + " findings " + changes.count(ChangeKind.NEW)
                + " new, " + changes.count(ChangeKind.CHANGED) + " changed, " + changes.count(ChangeKind.GONE)
                + " gone, "
                + changes.sameFindings() + " as before; lines of the order changed: "
                + changes.orders().size();
    }

    static CheckedDrop.Counts counts(CheckResult result) {
        var total = result.counts().total();
        return new CheckedDrop.Counts(total.conforms(), total.doesNotConform(), total.notAssessed(), total.conceded());
    }
}
