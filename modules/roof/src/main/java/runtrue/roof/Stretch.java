package runtrue.roof;

import java.util.List;

/**
 * A part of a plane between two positions across the fall over which a cut along the fall meets the same supports.
 *
 * @param low v of the plane's low edge
 * @param high v of its high edge
 * @param crossings supports from the eave up
 */
public record Stretch(Interval u, Ends low, Ends high, List<Crossing> crossings) {
    public Stretch {
        crossings = List.copyOf(crossings);
    }

    /** A position along the fall at both ends of the stretch, linear between them, metres. */
    public record Ends(double atFrom, double atTo) {}

    /** Where a support line crosses the stretch. */
    public record Crossing(String line, Ends v) {}
}
