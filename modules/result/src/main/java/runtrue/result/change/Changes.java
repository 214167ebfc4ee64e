package runtrue.result.change;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runtrue.result.Outcome;
import runtrue.result.Severity;

/**
 * How a drop differs from an earlier one, as far as people act on it.
 *
 * @param earlierDrop name of the earlier result's drop
 * @param earlierRunStamp time of its run, ISO 8601 with zone
 * @param basis what else differs that outcomes and quantities rest on, files, rules, roof system, settings: one sentence each
 * @param findings that are new, changed or gone, in this order
 * @param sameFindings findings that are as they were
 * @param planes that are new, changed or gone
 * @param orders lines of the bill whose ordered quantity differs
 */
public record Changes(
        String earlierDrop,
        String earlierRunStamp,
        List<String> basis,
        List<OfFinding> findings,
        int sameFindings,
        List<OfPlane> planes,
        List<OfOrder> orders) {
    public Changes {
        basis = List.copyOf(basis);
        findings = List.copyOf(findings);
        planes = List.copyOf(planes);
        orders = List.copyOf(orders);
    }

    /** How many findings changed in one way. */
    public long count(ChangeKind kind) {
        return findings.stream().filter(f -> f.kind() == kind).count();
    }

    /**
     * A finding that is not as it was.
     *
     * @param id of the finding, the same in both results
     * @param plane id in the result that holds the finding; empty when it is about none
     * @param before absent when it was no finding then
     * @param now {@code conforms} for what is cured; absent when nothing is judged under this id any more
     * @param words what is different, in a sentence
     */
    public record OfFinding(
            ChangeKind kind,
            String id,
            String rule,
            String title,
            Severity severity,
            String subject,
            String plane,
            Optional<Outcome> before,
            Optional<Outcome> now,
            String words) {}

    /**
     * A plane that is not as it was.
     *
     * @param figures that differ; none for a plane that is new or gone
     */
    public record OfPlane(ChangeKind kind, String id, String name, List<ChangedFigure> figures) {
        public OfPlane {
            figures = List.copyOf(figures);
        }
    }

    /** A figure of a plane, before and now. */
    public record ChangedFigure(String what, double before, double now, String unit) {}

    /**
     * A line of the bill.
     *
     * @param id of the line, the same in both results
     * @param before ordered quantity; absent when the line is new
     * @param now absent when the line is gone
     */
    public record OfOrder(
            String id, String description, String variant, String unit, OptionalDouble before, OptionalDouble now) {
        /** More to order now; negative for less. */
        public double difference() {
            return now.orElse(0) - before.orElse(0);
        }
    }
}
