package runtrue.cutting;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Different patterns, in the order in which they were found. */
final class PatternPool {
    private final List<int[]> patterns = new ArrayList<>();
    private final Set<List<Integer>> known = new HashSet<>();

    /** Whether it is a new one. */
    boolean add(int[] pattern) {
        boolean isNew = known.add(IntStream.of(pattern).boxed().toList());
        if (isNew) {
            patterns.add(pattern);
        }
        return isNew;
    }

    List<int[]> all() {
        return patterns;
    }

    /** Those that could be cut for the demand without a piece too many. */
    List<int[]> within(Demand demand) {
        return patterns.stream()
                .filter(p -> IntStream.range(0, p.length).allMatch(i -> p[i] <= demand.counts()[i]))
                .toList();
    }
}
