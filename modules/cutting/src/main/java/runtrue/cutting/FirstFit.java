package runtrue.cutting;

import java.util.ArrayList;
import java.util.List;

/** First fit decreasing: each piece, long before short, into the first bar that has room for it. */
final class FirstFit {
    private FirstFit() {}

    /** Counts of each size, one array a bar. */
    static List<int[]> bars(Demand demand) {
        List<int[]> bars = new ArrayList<>();
        List<Integer> room = new ArrayList<>();
        for (int i = 0; i < demand.kinds(); i++) {
            int left = demand.counts()[i];
            for (int b = 0; left > 0; b++) {
                if (b == bars.size()) {
                    bars.add(new int[demand.kinds()]);
                    room.add(demand.capacity());
                }
                int fits = Math.min(left, room.get(b) / demand.sizes()[i]);
                bars.get(b)[i] += fits;
                room.set(b, room.get(b) - fits * demand.sizes()[i]);
                left -= fits;
            }
        }
        return bars;
    }
}
