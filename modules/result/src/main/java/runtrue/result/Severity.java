package runtrue.result;

import com.fasterxml.jackson.annotation.JsonValue;

/** How much a non-conformance matters, worst first; in the format's own words. */
public enum Severity implements Labelled {
    CRITICAL("critical"),
    MAJOR("major"),
    MINOR("minor"),
    NOTE("note");

    private final String label;

    Severity(String label) {
        this.label = label;
    }

    @Override
    @JsonValue
    public String label() {
        return label;
    }
}
