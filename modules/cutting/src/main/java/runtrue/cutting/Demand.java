package runtrue.cutting;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Different sizes, long before short, each with one kerf added; and how many of each. */
final class Demand {
    private final int capacity;
    private final int[] sizes;
    private final int[] counts;

    Demand(int capacity, int[] sizes, int[] counts) {
        this.capacity = capacity;
        this.sizes = sizes;
        this.counts = counts;
    }

    int capacity() {
        return capacity;
    }

    int[] sizes() {
        return sizes;
    }

    int[] counts() {
        return counts;
    }

    static Demand of(Stock stock, List<Piece> pieces) {
        Map<Integer, Integer> byLength = new TreeMap<>((a, b) -> Integer.compare(b, a));
        for (Piece piece : pieces) {
            if (piece.length() > stock.length()) {
                throw new IllegalArgumentException("A piece of " + piece.length() + " mm cannot be cut from stock of "
                        + stock.length() + " mm: divide it, or name longer stock");
            }
            byLength.merge(piece.length() + stock.kerf(), piece.count(), Math::addExact);
        }
        return new Demand(
                stock.capacity(),
                byLength.keySet().stream().mapToInt(s -> s).toArray(),
                byLength.values().stream().mapToInt(c -> c).toArray());
    }

    Demand with(int[] left) {
        return new Demand(capacity, sizes, left);
    }

    int kinds() {
        return sizes.length;
    }
}
