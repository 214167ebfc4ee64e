package runtrue.result.change;

import com.fasterxml.jackson.annotation.JsonValue;
import runtrue.result.Labelled;

/** What happened to something since an earlier result, in the format's own words. */
public enum ChangeKind implements Labelled {
    NEW("new"),
    CHANGED("changed"),
    GONE("gone");

    private final String label;

    ChangeKind(String label) {
        this.label = label;
    }

    @Override
    @JsonValue
    public String label() {
        return label;
    }
}
