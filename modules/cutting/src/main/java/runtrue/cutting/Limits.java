package runtrue.cutting;

import java.time.Duration;

/**
 * How much work a plan may cost. Patterns and nodes are counted, so that every machine stops at the same place; the time is
 * a last resort, and a plan that it cut short says so.
 *
 * @param patterns to be made for the linear programme, at least 1
 * @param nodes of the search for whole numbers of bars, at least 1
 */
public record Limits(int patterns, int nodes, Duration time) {
    /** Enough for a thousand pieces of a hundred lengths; met in well under a second by most roofs. */
    public static final Limits USUAL = new Limits(600, 1500, Duration.ofSeconds(30));

    public Limits {
        if (patterns < 1 || nodes < 1 || time.isNegative() || time.isZero()) {
            throw new IllegalArgumentException(
                    "Limits of " + patterns + " patterns, " + nodes + " nodes and " + time + ": all must be above 0");
        }
    }
}
