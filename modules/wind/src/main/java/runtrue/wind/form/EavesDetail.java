package runtrue.wind.form;

import java.util.Locale;
import runtrue.wind.WindException;

/**
 * How the edge of a flat roof is made.
 *
 * @param size height of the parapet above the eaves or radius of the curb, metres; angle of the mansard, radians
 */
public record EavesDetail(Kind kind, double size) {
    /** What stands at the edge. */
    public enum Kind {
        SHARP,
        PARAPET,
        CURVED,
        MANSARD;

        /** As the data files name it. */
        public String label() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    public EavesDetail {
        if (!(size >= 0)) {
            throw new WindException(
                    "The size of the " + kind.label() + " eaves is " + size + "; it has to be 0 or more.");
        }
    }

    public static EavesDetail sharp() {
        return new EavesDetail(Kind.SHARP, 0);
    }

    public static EavesDetail parapet(double height) {
        return new EavesDetail(Kind.PARAPET, height);
    }

    public static EavesDetail curved(double radius) {
        return new EavesDetail(Kind.CURVED, radius);
    }

    public static EavesDetail mansard(double angle) {
        return new EavesDetail(Kind.MANSARD, angle);
    }
}
