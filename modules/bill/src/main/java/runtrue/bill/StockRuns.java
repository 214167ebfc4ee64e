package runtrue.bill;

import runtrue.bill.count.Subject;
import runtrue.rules.buildup.BuildUpItem.Packing;

/**
 * Runs made up of stock lengths: whole ones, lapped, and one that closes the run. Where that would be shorter than the shortest
 * piece, the one before it is cut shorter by as much; laps stay as many. (Common practice, no source.)
 */
final class StockRuns {
    private static final double ROUNDING = 1e-9;

    private final Packing stock;
    private final double lap;
    private final CutList pieces;
    private double laps;

    /** @param lap metres */
    StockRuns(Packing stock, double lap) {
        this.stock = stock;
        this.lap = lap;
        pieces = new CutList(stock);
    }

    /** Adds one run, metres, and gives the number of its pieces. */
    long add(double run, Subject subject) {
        long count = Math.max(1, (long) Math.ceil((run - lap) / (stock.length() - lap) - ROUNDING));
        laps += (count - 1) * lap;
        long whole = Thousandths.of(stock.length());
        long last = Thousandths.of(run - (count - 1) * (stock.length() - lap));
        long lacking = count > 1 ? Math.max(0, Thousandths.of(stock.shortest()) - last) : 0;
        if (lacking > 0) {
            pieces.add(whole - lacking, 1, subject);
        }
        long others = count - 1 - (lacking > 0 ? 1 : 0);
        if (others > 0) {
            pieces.add(whole, others, subject);
        }
        pieces.add(last + lacking, 1, subject);
        return count;
    }

    /** Metres. */
    double laps() {
        return laps;
    }

    CutList pieces() {
        return pieces;
    }
}
