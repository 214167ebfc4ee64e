package runtrue.result;

import com.fasterxml.jackson.annotation.JsonValue;

/** How much something amiss with a model bears on the results, most first; in the format's own words. */
public enum Importance implements Labelled {
    HIGH("high"),
    MEDIUM("medium"),
    LOW("low");

    private final String label;

    Importance(String label) {
        this.label = label;
    }

    @Override
    @JsonValue
    public String label() {
        return label;
    }
}
