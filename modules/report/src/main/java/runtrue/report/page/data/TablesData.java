package runtrue.report.page.data;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.result.BillResult;
import runtrue.result.CheckResult;
import runtrue.result.Counts;
import runtrue.result.Finding;
import runtrue.result.HealthLine;
import runtrue.result.Measure;
import runtrue.result.RuleSetInfo;
import runtrue.result.UnreadElement;

/** Quantities, rules, gaps and the ground that the figures stand on. */
final class TablesData {
    private TablesData() {}

    static void write(ScriptJson json, CheckResult result, Map<String, Integer> planes) {
        json.object("bill", () -> bill(json, result.bill(), planes));
        rules(json, result);
        json.objects("unread", result.unread(), TablesData::unread);
        json.objects("unplaced", result.unplaced(), TablesData::unread);
        json.objects("health", result.health(), TablesData::health);
        json.objects("concessions", result.concessions(), (j, c) -> {
            j.field("finding", c.finding());
            j.field("state", c.state());
            j.field("by", c.by());
            j.field("why", c.why());
            j.field("until", c.until());
            j.field("upTo", c.upTo());
            j.field("remark", c.remark());
            j.field("from", c.from());
        });
        ground(json, result);
    }

    private static void ground(ScriptJson json, CheckResult result) {
        json.objects("settings", result.settings(), (j, setting) -> {
            j.field("name", setting.name());
            j.field("value", setting.value());
            j.field("origin", setting.origin().label());
            j.field("file", setting.file());
        });
        json.objects("tolerances", result.tolerances(), (j, tolerance) -> {
            j.field("name", tolerance.name());
            j.field("value", tolerance.value());
            j.field("reason", tolerance.reason());
        });
        json.texts("cautions", result.cautions());
    }

    private static void bill(ScriptJson json, BillResult bill, Map<String, Integer> planes) {
        json.field("buildUp", bill.buildUp().title());
        json.field("source", bill.buildUp().source());
        json.objects("lines", bill.lines(), (j, line) -> {
            j.field("section", line.section());
            j.field("description", line.description());
            j.field("variant", line.variant());
            j.field("unit", line.unit());
            j.field("net", line.net());
            j.field("ordered", line.ordered());
            j.field("count", line.count());
            j.field("each", line.each());
            j.field("length", line.lengthMetres());
            j.field("mass", line.massKilograms());
            j.field("method", line.method());
            j.objects("parts", line.parts(), (k, part) -> {
                k.field("plane", planes.getOrDefault(part.plane(), -1));
                k.field("zone", part.zone());
                k.field("net", part.net());
                k.field("count", part.count());
            });
        });
        json.objects("figures", bill.figures(), (j, figure) -> {
            j.field("what", figure.what());
            j.field("value", figure.value());
            j.field("unit", figure.unit());
            j.field("verdict", figure.verdict());
            j.field("remark", figure.remark());
        });
        json.texts("missing", bill.missing());
    }

    private static void rules(ScriptJson json, CheckResult result) {
        Map<String, Counts.Outcomes> counts = result.counts().rules().stream()
                .collect(Collectors.toMap(Counts.RuleOutcomes::rule, Counts.RuleOutcomes::outcomes, (a, b) -> a));
        Map<String, List<Finding>> findings = result.findings().stream().collect(Collectors.groupingBy(Finding::rule));
        json.objects("rules", result.ruleSet().rules(), (j, rule) -> {
            j.field("id", rule.id());
            j.field("title", rule.title());
            j.field("severity", rule.severity().label());
            j.object(
                    "counts",
                    () -> HeadData.counts(j, counts.getOrDefault(rule.id(), new Counts.Outcomes(0, 0, 0, 0))));
            j.list(
                    "limits",
                    limits(result, rule),
                    limit -> j.object(() -> {
                        j.field("comparison", limit.comparison);
                        j.field("value", limit.value);
                    }));
            j.texts(
                    "sources",
                    findings.getOrDefault(rule.id(), List.of()).stream()
                            .map(Finding::limitSource)
                            .filter(s -> !s.isEmpty())
                            .distinct()
                            .toList());
        });
    }

    private record Limit(String comparison, Measure value) {}

    /** Different limits that the rule was applied with. */
    private static List<Limit> limits(CheckResult result, RuleSetInfo.Rule rule) {
        Stream<Limit> failing = result.findings().stream()
                .filter(f -> f.rule().equals(rule.id()))
                .map(f -> f.limit().map(l -> new Limit(f.comparison(), l)).orElse(null));
        Stream<Limit> conforming = result.conforming().stream()
                .filter(c -> c.rule().equals(rule.id()))
                .map(c -> c.limit().map(l -> new Limit(c.comparison(), l)).orElse(null));
        return Stream.concat(failing, conforming)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
    }

    private static void unread(ScriptJson json, UnreadElement element) {
        json.field("globalId", element.globalId());
        json.field("name", element.name());
        json.field("class", element.ifcClass());
        json.field("file", element.file());
        json.field("number", element.stepId());
        json.field("storey", element.storey());
        json.field("role", element.role());
        json.field("representation", element.representation());
        json.field("reason", element.reason());
    }

    private static void health(ScriptJson json, HealthLine line) {
        json.field("importance", line.importance().label());
        json.field("title", line.title());
        json.field("file", line.file());
        json.field("detail", line.detail());
        json.field("why", line.why());
        json.field("action", line.action());
        json.objects("items", line.items(), (j, item) -> {
            FindingsData.element(j, item.element());
            j.field("detail", item.detail());
        });
    }
}
