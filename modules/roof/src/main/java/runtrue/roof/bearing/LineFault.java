package runtrue.roof.bearing;

import runtrue.roof.Interval;

/**
 * Where a support line is not what it is elsewhere.
 *
 * @param line its number from the eave
 * @param u extent across the fall over which it holds, metres
 * @param v position up the fall in the middle of {@code u}, metres
 * @param angle between the piece and the direction across the fall, radians; 0 unless it crosses at an angle
 */
public record LineFault(Kind kind, int line, Interval u, double v, double angle) {
    /** Kinds of fault. */
    public enum Kind {
        /** Ends before the plane does. */
        STOPS_SHORT,
        /** No piece between two others. */
        MISSING,
        /** Runs at an angle to the lines across the fall. */
        ASKEW
    }
}
