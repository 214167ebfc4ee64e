package runtrue.bill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How a run that is longer than the longest sheet is made up of sheets. End laps lie over supports where these allow it, half on
 * either side of the support's middle: from the eave up each sheet reaches to the farthest support that it can, and the last
 * two meet over the support nearest to the middle of what they cover (common practice, no source). Else all are alike.
 *
 * @param pieces from the low end up
 * @param onSupports whether all laps lie over supports
 */
record SheetPieces(List<Piece> pieces, boolean onSupports) {
    private static final double ROUNDING = 1e-9;

    /**
     * One sheet.
     *
     * @param length laps included, metres
     * @param share of the run that it is counted with, laps not included
     */
    record Piece(double length, double share) {}

    /**
     * The sheets of one run.
     *
     * @param run metres
     * @param supports above the run's low end, metres, rising
     * @param lap metres
     * @param longest sheet, metres, more than the lap
     */
    static SheetPieces of(double run, List<Double> supports, double lap, double longest) {
        if (run <= longest + ROUNDING) {
            return new SheetPieces(List.of(new Piece(run, 1)), true);
        }
        List<Piece> lapped = overSupports(run, supports, lap, longest);
        return lapped.isEmpty() ? new SheetPieces(even(run, lap, longest), false) : new SheetPieces(lapped, true);
    }

    /** Empty where two supports are too far from each other for one sheet. */
    private static List<Piece> overSupports(double run, List<Double> supports, double lap, double longest) {
        List<Piece> pieces = new ArrayList<>();
        double start = 0;
        double counted = 0;
        while (run - start > longest + ROUNDING) {
            double next = meeting(supports, start, run, lap, longest);
            if (next - lap / 2 <= start + ROUNDING) {
                return List.of();
            }
            pieces.add(new Piece(next + lap / 2 - start, (next - counted) / run));
            start = next - lap / 2;
            counted = next;
        }
        pieces.add(new Piece(run - start, (run - counted) / run));
        return pieces;
    }

    /** Where the next two laps: for the last two sheets, near their middle; else as far as a sheet reaches. */
    private static double meeting(List<Double> supports, double start, double run, double lap, double longest) {
        double least = run + lap / 2 - longest;
        double most = start + longest - lap / 2;
        double middle = (start + run) / 2;
        return supports.stream()
                .filter(s -> s >= least - ROUNDING && s <= most + ROUNDING && s <= run - lap / 2)
                .min(Comparator.comparingDouble(s -> Math.abs(s - middle)))
                .orElseGet(() -> supports.stream()
                        .filter(s -> s <= most + ROUNDING && s <= run - lap / 2)
                        .max(Comparator.naturalOrder())
                        .orElse(0.0));
    }

    private static List<Piece> even(double run, double lap, double longest) {
        int count = (int) Math.ceil((run - lap) / (longest - lap) - ROUNDING);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            pieces.add(new Piece((run + (count - 1) * lap) / count, 1.0 / count));
        }
        return pieces;
    }
}
