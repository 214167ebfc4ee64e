package runtrue.cutting;

/** Bounds that need no search, in whole numbers. */
final class LowerBounds {
    private LowerBounds() {}

    static int ofLength(Demand demand) {
        long total = 0;
        for (int i = 0; i < demand.kinds(); i++) {
            total += (long) demand.sizes()[i] * demand.counts()[i];
        }
        return Math.toIntExact(ceil(total, demand.capacity()));
    }

    /** L2 of Martello and Toth, Lower bounds and reduction procedures for the bin packing problem (1990); from memory. */
    static int ofLongPieces(Demand demand) {
        int best = above(demand, 0);
        for (int size : demand.sizes()) {
            if (2 * size <= demand.capacity()) {
                best = Math.max(best, above(demand, size));
            }
        }
        return best;
    }

    /** Pieces shorter than {@code least} left out; those that leave no room for {@code least} take a bar each. */
    private static int above(Demand demand, int least) {
        long alone = 0;
        long large = 0;
        long free = 0;
        long small = 0;
        int capacity = demand.capacity();
        for (int i = 0; i < demand.kinds(); i++) {
            int size = demand.sizes()[i];
            long count = demand.counts()[i];
            if (size > capacity - least) {
                alone += count;
            } else if (2 * size > capacity) {
                large += count;
                free += count * (capacity - size);
            } else if (size >= least) {
                small += count * size;
            }
        }
        return Math.toIntExact(alone + large + Math.max(0, ceil(small - free, capacity)));
    }

    /** Of pieces as long as this or longer, a bar holds so many at most; those that leave no room for another take one each. */
    static int ofCount(Demand demand) {
        int best = 0;
        for (int least : demand.sizes()) {
            long alone = 0;
            long others = 0;
            for (int i = 0; i < demand.kinds(); i++) {
                int size = demand.sizes()[i];
                if (size >= least && size > demand.capacity() - least) {
                    alone += demand.counts()[i];
                } else if (size >= least) {
                    others += demand.counts()[i];
                }
            }
            best = Math.max(best, Math.toIntExact(alone + ceil(others, demand.capacity() / least)));
        }
        return best;
    }

    static long ceil(long dividend, long divisor) {
        return -Math.floorDiv(-dividend, divisor);
    }
}
