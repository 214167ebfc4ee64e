package runtrue.roof.health;

import java.util.Locale;

/** How much something amiss with a model bears on the results, most first. */
public enum Importance {
    /** Results are incomplete or may be wrong. */
    HIGH,
    /** Results stand on something that should be looked at. */
    MEDIUM,
    /** Something cannot be told that the drop could tell. */
    LOW;

    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
