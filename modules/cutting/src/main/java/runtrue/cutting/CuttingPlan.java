package runtrue.cutting;

import java.util.List;

/**
 * How pieces are cut from stock.
 *
 * @param lowerBound bars that no plan can do without
 * @param bound how the lower bound is known
 * @param patterns fullest bars first
 * @param cutShort whether the clock ended the search before it was done; another run may then find fewer bars
 */
public record CuttingPlan(Stock stock, int lowerBound, Bound bound, List<Pattern> patterns, boolean cutShort) {
    public CuttingPlan {
        patterns = List.copyOf(patterns);
    }

    /** Where a lower bound comes from. */
    public enum Bound {
        /** Total length over the length of a bar. */
        LENGTH("total length"),
        /** Pieces above half a bar share none; Martello and Toth's L2. */
        LONG_PIECES("long pieces"),
        /** So many pieces of a length or longer go into a bar at most. */
        COUNT("pieces in a bar"),
        /** Dual values of Gilmore and Gomory's linear programme. */
        PATTERNS("linear programme over patterns");

        private final String label;

        Bound(String label) {
            this.label = label;
        }

        /** For people. */
        public String label() {
            return label;
        }
    }

    public int bars() {
        return patterns.stream().mapToInt(Pattern::times).sum();
    }

    /** Whether no plan needs fewer bars. */
    public boolean proved() {
        return bars() == lowerBound;
    }

    /** Rests that are long enough to keep, millimetres in all. */
    public long kept() {
        return patterns.stream()
                .filter(p -> keeps(p.rest()))
                .mapToLong(p -> (long) p.times() * p.rest())
                .sum();
    }

    /** What is neither piece nor kept: kerfs and short rests, millimetres in all. */
    public long waste() {
        return (long) bars() * stock.length() - required() - kept();
    }

    private long required() {
        return patterns.stream()
                .mapToLong(p -> p.times()
                        * p.pieces().stream()
                                .mapToLong(c -> (long) c.length() * c.count())
                                .sum())
                .sum();
    }

    private boolean keeps(int rest) {
        return rest > 0 && rest >= stock.leastOffcut();
    }
}
