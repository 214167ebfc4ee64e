package runtrue.rules.judge;

import java.util.Optional;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.Rule.Limit;

/**
 * What one rule says of one subject, before it is put into words.
 *
 * @param toldBy id of the rule that tells of the reason why it was not assessed; empty where nothing else does
 * @param governing the strictest of the rule's limits, which {@code limit} is the value of; empty where none was compared
 */
record Verdict(
        Outcome outcome,
        Optional<Quantity> measured,
        Optional<Quantity> limit,
        Optional<Quantity> margin,
        Optional<Limit> governing,
        String limitSource,
        String reason,
        String toldBy) {
    /** One that nothing else tells of. */
    Verdict(
            Outcome outcome,
            Optional<Quantity> measured,
            Optional<Quantity> limit,
            Optional<Quantity> margin,
            Optional<Limit> governing,
            String limitSource,
            String reason) {
        this(outcome, measured, limit, margin, governing, limitSource, reason, "");
    }

    static Verdict notAssessed(String reason) {
        return notAssessed(Optional.empty(), reason);
    }

    static Verdict notAssessed(Optional<Quantity> measured, String reason) {
        return new Verdict(
                Outcome.NOT_ASSESSED, measured, Optional.empty(), Optional.empty(), Optional.empty(), "", reason);
    }

    static Verdict ofRequirement(boolean met, String source) {
        Outcome outcome = met ? Outcome.CONFORMS : Outcome.DOES_NOT_CONFORM;
        return new Verdict(outcome, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), source, "");
    }

    /** The same, where another rule tells of it. */
    Verdict toldBy(String rule) {
        return new Verdict(outcome, measured, limit, margin, governing, limitSource, reason, rule);
    }
}
