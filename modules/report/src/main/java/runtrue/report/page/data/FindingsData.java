package runtrue.report.page.data;

import java.util.List;
import java.util.Map;
import runtrue.result.CheckResult;
import runtrue.result.ElementRef;
import runtrue.result.Finding;
import runtrue.result.Point;

/** Findings in the order of reading, in full. */
final class FindingsData {
    private FindingsData() {}

    static void write(ScriptJson json, CheckResult result, Map<String, Integer> planes, Point origin) {
        Reading reading = Reading.of(result);
        json.objects("findings", reading.order(), (j, i) -> {
            Finding finding = result.findings().get(i);
            j.field("sign", reading.signs().get(i));
            j.field("plane", planes.getOrDefault(finding.plane(), -1));
            what(j, finding);
            where(j, finding, origin);
            measure(j, finding);
        });
    }

    private static void what(ScriptJson json, Finding finding) {
        json.field("id", finding.id());
        json.field("rule", finding.rule());
        json.field("title", finding.title());
        json.field("severity", finding.severity().label());
        json.field("outcome", finding.outcome().label());
        json.field("subject", finding.subject());
        json.field("message", finding.message());
        json.field("cure", finding.cure());
        json.field("reason", finding.reason());
        json.texts("facts", finding.facts());
    }

    private static void where(ScriptJson json, Finding finding, Point origin) {
        json.field("planeName", finding.planeName());
        json.field("storey", finding.storey());
        json.field("grid", finding.gridPlace());
        json.texts("files", finding.files());
        finding.place().ifPresent(place -> json.points("place", List.of(place), origin));
        json.objects("elements", finding.elements(), FindingsData::element);
    }

    private static void measure(ScriptJson json, Finding finding) {
        json.field("measured", finding.measured());
        json.field("limit", finding.limit());
        json.field("margin", finding.margin());
        json.field("comparison", finding.comparison());
        json.field("source", finding.limitSource());
    }

    static void element(ScriptJson json, ElementRef element) {
        json.field("globalId", element.globalId());
        json.field("name", element.name());
        json.field("class", element.ifcClass());
        json.field("file", element.file());
        json.field("number", element.stepId());
        json.field("storey", element.storey());
        json.field("evidence", element.evidence());
    }
}
