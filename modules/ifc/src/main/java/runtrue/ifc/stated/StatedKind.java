package runtrue.ifc.stated;

import java.util.Locale;

/** What a stated quantity is about. */
public enum StatedKind {
    /** Angle to the horizontal: of a roof's surface, or of a member's axis. */
    PITCH,
    AREA,
    /** Along a member's axis. */
    LENGTH,
    /** Square to the surface. */
    THICKNESS;

    public String label() {
        return name().toLowerCase(Locale.ROOT);
    }
}
