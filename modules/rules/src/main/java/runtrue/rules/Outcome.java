package runtrue.rules;

import java.util.Locale;

/** What a rule says of one subject. */
public enum Outcome {
    CONFORMS,
    DOES_NOT_CONFORM,
    /** The rule applies but cannot be judged; the reason is given. Never counted as conforming. */
    NOT_ASSESSED,
    /** Does not conform, and accepted by a named person. */
    CONCEDED;

    /** For people and files: {@code does not conform}. */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
