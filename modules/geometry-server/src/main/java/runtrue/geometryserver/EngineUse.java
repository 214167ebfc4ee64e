package runtrue.geometryserver;

import java.util.Locale;

/** What the second engine is asked for. */
public enum EngineUse {
    /** Nothing: the built-in reader alone. */
    BUILT_IN,
    /** Elements that the built-in reader reports as unread. */
    FILL_IN,
    /** All elements; those that it does not give are the built-in reader's. */
    SECOND,
    /** As {@link #FILL_IN}, and all elements are read by both and compared. */
    COMPARE;

    /** As the command line writes it: {@code fill-in}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
