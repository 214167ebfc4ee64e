package runtrue.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.function.LongSupplier;
import runtrue.cutting.CuttingPlan.Bound;

/** Cuts pieces from stock lengths. */
public final class Cutting {
    private Cutting() {}

    /**
     * A plan with few bars: by first fit where a bound proves it best, else by the programme over patterns. It may lie above
     * the lower bound; {@link CuttingPlan#proved} tells. The order of the pieces does not matter.
     *
     * @throws IllegalArgumentException if a piece is longer than the stock
     */
    public static CuttingPlan of(Stock stock, List<Piece> pieces) {
        return of(stock, pieces, Limits.USUAL);
    }

    /** The same within other limits. */
    public static CuttingPlan of(Stock stock, List<Piece> pieces, Limits limits) {
        return of(stock, pieces, limits, System::nanoTime);
    }

    /** @param nanoseconds clock for the limit of time */
    static CuttingPlan of(Stock stock, List<Piece> pieces, Limits limits, LongSupplier nanoseconds) {
        Demand demand = Demand.of(stock, pieces);
        int bound = LowerBounds.ofLength(demand);
        Bound by = Bound.LENGTH;
        if (LowerBounds.ofLongPieces(demand) > bound) {
            bound = LowerBounds.ofLongPieces(demand);
            by = Bound.LONG_PIECES;
        }
        if (LowerBounds.ofCount(demand) > bound) {
            bound = LowerBounds.ofCount(demand);
            by = Bound.COUNT;
        }
        List<int[]> bars = FirstFit.bars(demand);
        if (bars.size() <= bound) {
            return new CuttingPlan(stock, bound, by, patterns(stock, demand, bars), false);
        }
        Search search = new Search(demand, bars, bound, limits, nanoseconds);
        by = search.bound() > bound ? Bound.PATTERNS : by;
        boolean cutShort = search.outOfTime() && search.bars().size() > search.bound();
        return new CuttingPlan(stock, search.bound(), by, patterns(stock, demand, search.bars()), cutShort);
    }

    private static List<Pattern> patterns(Stock stock, Demand demand, List<int[]> bars) {
        TreeMap<int[], Integer> times = new TreeMap<>(Comparator.comparingInt((int[] bar) -> rest(demand, bar))
                .thenComparing((a, b) -> Arrays.compare(b, a)));
        bars.forEach(bar -> times.merge(bar, 1, Integer::sum));
        List<Pattern> patterns = new ArrayList<>();
        times.forEach((bar, n) -> {
            List<Piece> pieces = new ArrayList<>();
            for (int i = 0; i < bar.length; i++) {
                if (bar[i] > 0) {
                    pieces.add(new Piece(demand.sizes()[i] - stock.kerf(), bar[i]));
                }
            }
            patterns.add(new Pattern(pieces, n, Math.max(0, rest(demand, bar) - stock.kerf())));
        });
        return patterns;
    }

    private static int rest(Demand demand, int[] bar) {
        int rest = demand.capacity();
        for (int i = 0; i < bar.length; i++) {
            rest -= bar[i] * demand.sizes()[i];
        }
        return rest;
    }
}
