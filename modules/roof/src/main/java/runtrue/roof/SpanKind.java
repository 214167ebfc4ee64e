package runtrue.roof;

import java.util.Locale;

/** What a length of sheet between or past supports is. */
public enum SpanKind {
    /** Next to the first or last support, or the only span. */
    END_SPAN,
    INTERNAL_SPAN,
    /** From the low edge to the first support. */
    EAVE_OVERHANG,
    /** From the last support to the high edge. */
    RIDGE_OVERHANG;

    /** For people and files: {@code end span}. */
    public String label() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
