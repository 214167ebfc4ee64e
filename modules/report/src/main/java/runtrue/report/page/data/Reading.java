package runtrue.report.page.data;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import runtrue.result.CheckResult;
import runtrue.result.Finding;
import runtrue.result.Outcome;

/**
 * The order in which a person should read findings: what does not conform first, by severity, then what misses its limit by
 * the greatest part of it; then what was not assessed; then what was conceded.
 *
 * @param order positions in {@code CheckResult.findings}
 * @param signs of each finding in the order of the result: the number of its row in the non-conformance workbook, as on the
 *     drawings, or a question mark
 */
record Reading(List<Integer> order, List<String> signs) {
    Reading {
        order = List.copyOf(order);
        signs = List.copyOf(signs);
    }

    static Reading of(CheckResult result) {
        List<Finding> findings = result.findings();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < findings.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingInt((Integer i) -> rank(findings.get(i).outcome()))
                .thenComparing(i -> findings.get(i).severity())
                .thenComparing(i -> -missedBy(findings.get(i))));
        return new Reading(order, signs(result));
    }

    /** Rows of the workbook: what does not conform, then what was conceded. */
    private static List<String> signs(CheckResult result) {
        Map<Outcome, Integer> next = new HashMap<>();
        next.put(Outcome.DOES_NOT_CONFORM, 1);
        next.put(Outcome.CONCEDED, 1 + result.findings(Outcome.DOES_NOT_CONFORM).size());
        return result.findings().stream()
                .map(f -> next.containsKey(f.outcome())
                        ? Integer.toString(next.merge(f.outcome(), 1, Integer::sum) - 1)
                        : "?")
                .toList();
    }

    private static int rank(Outcome outcome) {
        return switch (outcome) {
            case DOES_NOT_CONFORM -> 0;
            case NOT_ASSESSED -> 1;
            case CONCEDED -> 2;
            case CONFORMS -> 3;
        };
    }

    /** The margin as a part of the limit; 1 of a limit of nothing, 0 where either is missing. */
    static double missedBy(Finding finding) {
        if (finding.margin().isEmpty() || finding.limit().isEmpty()) {
            return 0;
        }
        double margin = -finding.margin().get().value();
        double limit = Math.abs(finding.limit().get().value());
        if (margin <= 0) {
            return 0;
        }
        return limit == 0 ? 1 : margin / limit;
    }
}
