package runtrue.result.build;

import runtrue.bill.StockPlan;
import runtrue.result.BillResult;

/** How stock lengths are cut, for the result. */
final class StockPlanMapping {
    private StockPlanMapping() {}

    static BillResult.StockPlan of(StockPlan plan) {
        return new BillResult.StockPlan(
                plan.stock(),
                plan.kerf(),
                plan.count(),
                plan.lowerBound(),
                plan.bound(),
                plan.proved(),
                plan.cutShort(),
                plan.rests(),
                plan.patterns().stream().map(StockPlanMapping::pattern).toList());
    }

    private static BillResult.Pattern pattern(StockPlan.Pattern pattern) {
        return new BillResult.Pattern(
                pattern.times(),
                pattern.cuts().stream()
                        .map(c -> new BillResult.Cut(
                                c.length(),
                                c.each(),
                                c.uses().stream()
                                        .map(u -> new BillResult.Use(u.from(), u.what(), u.count()))
                                        .toList()))
                        .toList(),
                pattern.rest());
    }
}
