package runtrue.roof;

import java.util.Locale;

/** Parts of a roof by their distance from the outline of the roof in plan. */
public enum ZoneKind {
    CORNER,
    EDGE,
    INTERIOR;

    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
