package runtrue.rules;

import java.util.List;
import java.util.Optional;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.SubjectKind;
import runtrue.rules.units.Unit;

/**
 * A rule, checked. It either requires a truth or measures against limits.
 *
 * @param when whether the rule is for this subject at all; a rule without it is for all of its kind
 * @param unassessable conditions under which nothing can be said, with the reason
 * @param require what must be true; empty for rules that measure
 * @param measure what is measured; empty for rules that require
 * @param unit in which people read measure and limit
 * @param limits all must be kept; the strictest governs
 * @param cautions what a reader must bear in mind
 */
public record Rule(
        String id,
        String title,
        Severity severity,
        SubjectKind kind,
        Optional<Expression> when,
        List<Unassessable> unassessable,
        Optional<Expression> require,
        Optional<Expression> measure,
        Unit unit,
        Comparison comparison,
        List<Limit> limits,
        String source,
        String message,
        String cure,
        List<String> cautions) {
    public Rule {
        unassessable = List.copyOf(unassessable);
        limits = List.copyOf(limits);
        cautions = List.copyOf(cautions);
    }

    /** Which side of the limit is good. */
    public enum Comparison {
        AT_LEAST,
        AT_MOST;

        public String label() {
            return this == AT_LEAST ? "at least" : "at most";
        }
    }

    /** Outcomes that are not certain under a condition. */
    public enum Spoils {
        ANY,
        BREACH,
        CONFORMANCE
    }

    /**
     * A condition under which nothing can be said.
     *
     * @param spoils which outcomes it leaves open; the others are certain all the same
     * @param toldBy id of a rule above, for the plane or the drop, that tells of the cause where it does not conform or is
     *     not assessed itself: then this rule does not say it again; empty where it always does
     */
    public record Unassessable(Expression when, String because, Spoils spoils, String toldBy) {}

    /**
     * One limit: a fixed quantity, or an expression that gives it in SI.
     *
     * @param source where it comes from; empty to take the rule's
     */
    public record Limit(Optional<Quantity> fixed, Optional<Expression> expression, String source) {}
}
