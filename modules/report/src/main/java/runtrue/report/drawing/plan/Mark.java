package runtrue.report.drawing.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import runtrue.result.CheckResult;
import runtrue.result.Finding;
import runtrue.result.Outcome;
import runtrue.result.Point;

/**
 * A sign on the drawing for what was found.
 *
 * @param sign what stands in it
 * @param findings one, or all that were not assessed of one plane
 */
public record Mark(Outcome outcome, String sign, List<Finding> findings) {
    public Mark {
        findings = List.copyOf(findings);
    }

    /**
     * Numbers are those of the rows of the non-conformance workbook, the same on all drawings of a drop: first what does not
     * conform, then what was conceded.
     */
    static List<Mark> of(CheckResult result, Set<String> planes) {
        List<Mark> marks = new ArrayList<>();
        int row = 0;
        for (Outcome outcome : List.of(Outcome.DOES_NOT_CONFORM, Outcome.CONCEDED)) {
            for (Finding finding : result.findings(outcome)) {
                row++;
                if (planes.contains(finding.plane())) {
                    marks.add(new Mark(outcome, Integer.toString(row), List.of(finding)));
                }
            }
        }
        Map<String, List<Finding>> open = new LinkedHashMap<>();
        result.findings(Outcome.NOT_ASSESSED).stream()
                .filter(f -> planes.contains(f.plane()))
                .forEach(f ->
                        open.computeIfAbsent(f.plane(), p -> new ArrayList<>()).add(f));
        open.values().forEach(f -> marks.add(new Mark(Outcome.NOT_ASSESSED, "?", f)));
        return marks;
    }

    /** Where it is; the first place that any of its findings states. */
    Optional<Point> place() {
        return findings.stream().flatMap(f -> f.place().stream()).findFirst();
    }

    public Finding finding() {
        return findings.get(0);
    }
}
