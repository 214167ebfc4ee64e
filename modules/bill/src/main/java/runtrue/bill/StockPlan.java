package runtrue.bill;

import java.util.List;

/**
 * How stock lengths are cut into the pieces of a line. Metres, to the millimetre.
 *
 * @param stock length of each
 * @param kerf that a cut takes off
 * @param count of stock lengths
 * @param lowerBound stock lengths that no plan can do without
 * @param bound how the lower bound is known
 * @param cutShort whether the clock ended the search before its work was done
 * @param rests total of what is left, kerfs not in it
 * @param patterns fullest stock lengths first
 */
public record StockPlan(
        double stock,
        double kerf,
        long count,
        long lowerBound,
        String bound,
        boolean cutShort,
        double rests,
        List<Pattern> patterns) {
    public StockPlan {
        patterns = List.copyOf(patterns);
    }

    /** Whether no plan needs fewer stock lengths. */
    public boolean proved() {
        return count == lowerBound;
    }

    /**
     * Stock lengths that are cut alike.
     *
     * @param times how many of them
     * @param rest of each, behind the last cut
     */
    public record Pattern(long times, List<Cut> cuts, double rest) {
        public Pattern {
            cuts = List.copyOf(cuts);
        }
    }

    /**
     * Pieces of one length.
     *
     * @param each how many one stock length gives
     * @param uses what those of all stock lengths of the pattern are for
     */
    public record Cut(double length, long each, List<Use> uses) {
        public Cut {
            uses = List.copyOf(uses);
        }
    }

    /**
     * What pieces are for.
     *
     * @param from id of an edge, a support line, an opening or a plane
     * @param what the same for people
     */
    public record Use(String from, String what, long count) {}
}
