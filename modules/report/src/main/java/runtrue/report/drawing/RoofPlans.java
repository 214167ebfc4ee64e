package runtrue.report.drawing;

import java.util.ArrayList;
import java.util.List;
import runtrue.report.drawing.plan.Roof;
import runtrue.report.drawing.plan.Roofs;
import runtrue.result.CheckResult;

/** The plan drawings of a result: one for each roof of the drop, largest first; none when no plane was found. */
public final class RoofPlans {
    private RoofPlans() {}

    /** Shares the planes out to drawings; nothing is drawn yet. */
    public static List<RoofPlan> of(CheckResult result) {
        List<Roof> roofs = Roofs.of(result);
        List<RoofPlan> plans = new ArrayList<>();
        for (int i = 0; i < roofs.size(); i++) {
            plans.add(new RoofPlan(result, roofs.get(i), i + 1, roofs.size()));
        }
        return plans;
    }
}
