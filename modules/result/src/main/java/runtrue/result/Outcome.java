package runtrue.result;

import com.fasterxml.jackson.annotation.JsonValue;

/**
 * What a rule says of one subject, in the format's own words: they stand in files that outlive the program's constants.
 */
public enum Outcome implements Labelled {
    CONFORMS("conforms"),
    DOES_NOT_CONFORM("does not conform"),
    /** The rule applies but could not be judged. Never counted as conforming. */
    NOT_ASSESSED("not assessed"),
    /** Does not conform, and accepted by a named person. */
    CONCEDED("conceded");

    private final String label;

    Outcome(String label) {
        this.label = label;
    }

    @Override
    @JsonValue
    public String label() {
        return label;
    }
}
