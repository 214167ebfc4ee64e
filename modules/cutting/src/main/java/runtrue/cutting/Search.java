package runtrue.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.stream.IntStream;

/**
 * From a plan that no simple bound proves to a better one, or to a better bound: patterns are made as the linear programme
 * asks for them, the whole part of its answer is cut and the rest put to it anew; last, whole numbers of all patterns that
 * came up are searched for.
 */
final class Search {
    /** Values of pieces are rounded down to this part of a bar: the bound then rests on whole numbers only. */
    private static final long SCALE = 10_000_000;

    private static final double NEGLIGIBLE = 1e-6;

    private final Demand all;
    private final Limits limits;
    private final LongSupplier nanoseconds;
    private final long begun;
    private final PatternPool pool = new PatternPool();
    private List<int[]> best;
    private int bound;
    private int made;
    private boolean outOfTime;

    /**
     * Searches.
     *
     * @param start bars of a plan that is to be improved
     * @param bound that is known
     * @param nanoseconds the clock that the time limit goes by
     */
    Search(Demand all, List<int[]> start, int bound, Limits limits, LongSupplier nanoseconds) {
        this.all = all;
        this.bound = bound;
        this.limits = limits;
        this.nanoseconds = nanoseconds;
        begun = nanoseconds.getAsLong();
        best = start;
        start.forEach(pool::add);
        for (int i = 0; i < all.kinds(); i++) {
            pool.add(alone(all, i));
        }
        generate(all, true);
        if (best.size() > this.bound) {
            dive();
        }
        if (best.size() > this.bound) {
            whole();
        }
    }

    List<int[]> bars() {
        return best;
    }

    int bound() {
        return bound;
    }

    /** Whether the clock and not the work ended it. */
    boolean outOfTime() {
        return outOfTime;
    }

    private static int[] alone(Demand demand, int size) {
        int[] pattern = new int[demand.kinds()];
        pattern[size] = Math.min(demand.capacity() / demand.sizes()[size], demand.counts()[size]);
        return pattern;
    }

    /** Makes patterns for a demand until the linear programme over them is that over all patterns. */
    private List<int[]> generate(Demand demand, boolean bounds) {
        for (int i = 0; i < demand.kinds(); i++) {
            if (demand.counts()[i] > 0) {
                pool.add(alone(demand, i));
            }
        }
        while (made < limits.patterns() && milliseconds() > 0) {
            long[] values = whole(new PatternProgramme(demand, pool.within(demand)).values());
            Knapsack worthiest = Knapsack.best(demand, values);
            if (bounds && worthiest.worth() > 0) {
                bound = Math.max(bound, farley(demand, values, worthiest.worth()));
            }
            if (worthiest.worth() <= SCALE * (1 + NEGLIGIBLE) || !pool.add(worthiest.pattern())) {
                break;
            }
            made++;
        }
        return pool.within(demand);
    }

    private static long[] whole(double[] values) {
        return Arrays.stream(values)
                .mapToLong(v -> Math.max(0, (long) Math.floor(v * SCALE)))
                .toArray();
    }

    /** Any values of the pieces prove a bound, once the bar that is worth most is known (Farley 1990, from memory). */
    private static int farley(Demand demand, long[] values, long worthOfBar) {
        long total = IntStream.range(0, values.length)
                .mapToLong(i -> values[i] * demand.counts()[i])
                .sum();
        return Math.toIntExact(LowerBounds.ceil(total, worthOfBar));
    }

    /** Cuts what the linear programme uses a whole number of times, else one bar of what it uses most; then asks anew. */
    private void dive() {
        int[] left = all.counts().clone();
        List<int[]> done = new ArrayList<>();
        List<int[]> patterns = pool.within(all);
        while (best.size() > bound && milliseconds() > 0 && Arrays.stream(left).anyMatch(c -> c > 0)) {
            double[] times = new PatternProgramme(all.with(left.clone()), patterns).fractions();
            if (!cut(times, patterns, left, done)) {
                break;
            }
            Demand rest = all.with(left.clone());
            consider(done, FirstFit.bars(rest));
            patterns = generate(rest, false);
        }
    }

    private static boolean cut(double[] times, List<int[]> patterns, int[] left, List<int[]> done) {
        int before = done.size();
        int most = 0;
        for (int p = 0; p < times.length; p++) {
            most = times[p] > times[most] + NEGLIGIBLE ? p : most;
            for (int n = (int) Math.floor(times[p] + NEGLIGIBLE); n > 0; n--) {
                cut(patterns.get(p), left, done);
            }
        }
        return done.size() > before || (times.length > 0 && cut(patterns.get(most), left, done));
    }

    /** Cuts one bar, if all its pieces are still needed. */
    private static boolean cut(int[] pattern, int[] left, List<int[]> done) {
        if (IntStream.range(0, left.length).anyMatch(i -> pattern[i] > left[i])) {
            return false;
        }
        for (int i = 0; i < left.length; i++) {
            left[i] -= pattern[i];
        }
        done.add(pattern);
        return true;
    }

    private void consider(List<int[]> done, List<int[]> rest) {
        if (done.size() + rest.size() < best.size()) {
            best = new ArrayList<>(done);
            best.addAll(rest);
        }
    }

    private void whole() {
        long left = milliseconds();
        if (left <= 0) {
            return;
        }
        List<int[]> patterns = pool.all();
        Optional<int[]> times = new PatternProgramme(all, patterns).whole(bound, best.size() - 1, limits.nodes(), left);
        milliseconds();
        if (times.isEmpty()) {
            return;
        }
        int[] needed = all.counts().clone();
        List<int[]> bars = new ArrayList<>();
        for (int p = 0; p < patterns.size(); p++) {
            for (int n = 0; n < times.get()[p]; n++) {
                bars.add(needed(patterns.get(p), needed));
            }
        }
        if (Arrays.stream(needed).allMatch(c -> c == 0)) {
            bars.removeIf(bar -> Arrays.stream(bar).allMatch(c -> c == 0));
            consider(List.of(), bars);
        }
    }

    /** The pattern without pieces of which there are enough. */
    private static int[] needed(int[] pattern, int[] needed) {
        int[] bar = new int[pattern.length];
        for (int i = 0; i < bar.length; i++) {
            bar[i] = Math.min(pattern[i], needed[i]);
            needed[i] -= bar[i];
        }
        return bar;
    }

    /** Left of the time; none left is kept in mind. */
    private long milliseconds() {
        long left = limits.time().toMillis() - (nanoseconds.getAsLong() - begun) / 1_000_000;
        outOfTime |= left <= 0;
        return left;
    }
}
