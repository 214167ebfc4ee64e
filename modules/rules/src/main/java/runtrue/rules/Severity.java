package runtrue.rules;

import java.util.Locale;

/** How much a non-conformance matters. */
public enum Severity {
    /** Cannot be built or will leak or fail as drawn. */
    CRITICAL,
    MAJOR,
    MINOR,
    NOTE;

    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
