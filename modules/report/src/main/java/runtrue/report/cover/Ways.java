package runtrue.report.cover;

import java.util.Map;
import java.util.Optional;
import runtrue.report.sheet.Link;
import runtrue.result.Finding;
import runtrue.result.Outcome;

/**
 * Where a cover leads in its workbook.
 *
 * @param outcomes to the table of what came out so
 * @param findings to the row of a finding, by its id
 */
public record Ways(Map<Outcome, Link> outcomes, Map<String, Link> findings) {
    public Ways {
        outcomes = Map.copyOf(outcomes);
        findings = Map.copyOf(findings);
    }

    Optional<Link> to(Outcome outcome) {
        return Optional.ofNullable(outcomes.get(outcome));
    }

    Optional<Link> to(Finding finding) {
        return Optional.ofNullable(findings.get(finding.id()));
    }
}
