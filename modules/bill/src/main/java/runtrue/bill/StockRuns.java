package runtrue.bill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import runtrue.rules.buildup.BuildUpItem.Packing;

/**
 * Pieces that runs are made up of: whole stock lengths, lapped, and a shorter one at the end. How they are cut from stock is
 * not decided here; a run needs at least this many.
 */
final class StockRuns {
    private static final double ROUNDING = 1e-9;

    private final Packing stock;
    private final double lap;
    private final Map<Long, Long> pieces = new TreeMap<>(Comparator.reverseOrder());
    private double laps;

    /** @param lap metres */
    StockRuns(Packing stock, double lap) {
        this.stock = stock;
        this.lap = lap;
    }

    /** Adds one run, metres, and gives the number of its pieces. */
    long add(double run) {
        long count = Math.max(1, (long) Math.ceil((run - lap) / (stock.length() - lap) - ROUNDING));
        laps += (count - 1) * lap;
        long last = Thousandths.of(run - (count - 1) * (stock.length() - lap));
        if (count > 1) {
            pieces.merge(Thousandths.of(stock.length()), count - 1, Long::sum);
        }
        pieces.merge(last, 1L, Long::sum);
        return count;
    }

    /** Metres. */
    double laps() {
        return laps;
    }

    /** Required lengths, long before short. */
    List<BillLine.Pieces> pieces() {
        List<BillLine.Pieces> all = new ArrayList<>();
        pieces.forEach((length, count) -> all.add(new BillLine.Pieces(Thousandths.quantity(length), count)));
        return all;
    }
}
