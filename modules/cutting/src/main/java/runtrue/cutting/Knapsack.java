package runtrue.cutting;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** The bar that is worth most: at most the demanded count of each size, by dynamic programming over whole millimetres. */
final class Knapsack {
    private final int[] pattern;
    private final long worth;

    private Knapsack(int[] pattern, long worth) {
        this.pattern = pattern;
        this.worth = worth;
    }

    /** Count of each size. */
    int[] pattern() {
        return pattern;
    }

    long worth() {
        return worth;
    }

    private record Bundle(int kind, int count) {}

    /** @param values of one piece of each size, none below 0 */
    static Knapsack best(Demand demand, long[] values) {
        List<Bundle> bundles = bundles(demand, values);
        long[] worth = new long[demand.capacity() + 1];
        List<BitSet> taken = new ArrayList<>();
        for (Bundle bundle : bundles) {
            taken.add(take(
                    worth, bundle.count() * demand.sizes()[bundle.kind()], bundle.count() * values[bundle.kind()]));
        }
        int[] pattern = new int[demand.kinds()];
        int room = demand.capacity();
        for (int b = bundles.size() - 1; b >= 0; b--) {
            if (taken.get(b).get(room)) {
                Bundle bundle = bundles.get(b);
                pattern[bundle.kind()] += bundle.count();
                room -= bundle.count() * demand.sizes()[bundle.kind()];
            }
        }
        return new Knapsack(pattern, worth[demand.capacity()]);
    }

    private static BitSet take(long[] worth, int size, long value) {
        BitSet taken = new BitSet(worth.length);
        for (int room = worth.length - 1; room >= size; room--) {
            long with = worth[room - size] + value;
            if (with > worth[room]) {
                worth[room] = with;
                taken.set(room);
            }
        }
        return taken;
    }

    /** Counts as sums of 1, 2, 4 and so on, so that each size is looked at a few times only. */
    private static List<Bundle> bundles(Demand demand, long[] values) {
        List<Bundle> bundles = new ArrayList<>();
        for (int i = 0; i < demand.kinds(); i++) {
            int left = values[i] > 0 ? Math.min(demand.counts()[i], demand.capacity() / demand.sizes()[i]) : 0;
            for (int count = 1; left > 0; count *= 2) {
                int bundle = Math.min(count, left);
                bundles.add(new Bundle(i, bundle));
                left -= bundle;
            }
        }
        return bundles;
    }
}
