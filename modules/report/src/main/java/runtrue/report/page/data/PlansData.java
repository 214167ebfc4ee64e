package runtrue.report.page.data;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import runtrue.report.drawing.RoofPlan;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Vec;
import runtrue.result.CheckResult;
import runtrue.result.Finding;
import runtrue.result.Point;

/** Which drawing shows what, and where on it each finding is. */
final class PlansData {
    private PlansData() {}

    static void write(ScriptJson json, CheckResult result, List<RoofPlan> plans) {
        List<Finding> inOrder =
                Reading.of(result).order().stream().map(result.findings()::get).toList();
        json.objects("plans", plans, (j, plan) -> {
            j.field("name", plan.name());
            j.field("title", plan.title());
            j.texts("planes", plan.planes());
            Box frame = plan.frame();
            j.metres("plan", frame.left(), frame.top(), frame.width(), frame.height());
            Function<Point, Vec> onPage = plan.places();
            j.objects("places", placed(inOrder, plan), (k, position) -> {
                k.field("finding", position);
                inOrder.get(position).place().map(onPage).ifPresent(at -> k.metres("at", at.x(), at.y()));
            });
        });
    }

    private static List<Integer> placed(List<Finding> findings, RoofPlan plan) {
        Set<String> planes = Set.copyOf(plan.planes());
        List<Integer> placed = new ArrayList<>();
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            if (finding.place().isPresent() && planes.contains(finding.plane())) {
                placed.add(i);
            }
        }
        return placed;
    }
}
