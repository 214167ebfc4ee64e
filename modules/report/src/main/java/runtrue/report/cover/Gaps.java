package runtrue.report.cover;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.stream.Collectors;
import runtrue.result.CheckResult;
import runtrue.result.Finding;
import runtrue.result.Outcome;

/** What was not assessed, by cause: what is missing once is told once, however many planes wait for it. */
public final class Gaps {
    private Gaps() {}

    /** Findings of one rule with one reason, in the result's order; none is empty. */
    public static List<List<Finding>> of(CheckResult result) {
        return new ArrayList<>(result.findings(Outcome.NOT_ASSESSED).stream()
                .collect(Collectors.groupingBy(
                        f -> List.of(f.rule(), f.reason()), LinkedHashMap::new, Collectors.toList()))
                .values());
    }
}
