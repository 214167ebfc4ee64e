package runtrue.rules.concede;

import java.util.Locale;

/**
 * What became of a concession.
 *
 * @param remark one sentence that says why, and what to do where it does not hold
 */
public record ConcessionUse(Concession concession, State state, String remark) {
    /** Whether a concession holds, and if not, what stands against it. */
    public enum State {
        HOLDS,
        /** Its last day is past. */
        EXPIRED,
        /** The finding has become worse than was accepted. */
        EXCEEDED,
        /** It does not say up to which value, or in a unit of something else. */
        UNCLEAR,
        /** The finding could not be assessed in this drop; nothing can be accepted that is not known. */
        NOT_ASSESSED,
        /** What was accepted conforms now. */
        CURED,
        /** No finding of this drop has that id. */
        UNKNOWN;

        /** For people and files: {@code not assessed}. */
        public String label() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }
}
