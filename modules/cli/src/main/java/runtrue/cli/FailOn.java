package runtrue.cli;

import java.util.Locale;

/** What may turn the exit code from 0. */
enum FailOn {
    NEVER,
    NON_CONFORMING,
    NOT_ASSESSED,
    UNREAD;

    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@code non-conforming} and the like. */
    static final class Words extends OptionWords<FailOn> {
        Words() {
            super(values());
        }
    }
}
