package runtrue.roof.edge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import runtrue.roof.RoofTolerance;

/**
 * A side with the returns at its ends: jogs of the outline too short for a flashing of their own, which bodies cut by each
 * other leave. Their length counts with the side's, so that a plane's edges still add up to its outline.
 *
 * @param length of the side and its returns, metres
 */
record Returns(Side side, double length) {
    private static final double LEAST = RoofTolerance.RETURN.si();

    /** Corners nearer than this are one, metres. */
    private static final double SAME = 1e-6;

    /**
     * What is left to flash of one plane's outer sides.
     *
     * @param sides in the order of the ring, those of edges shared with other planes left out
     * @param joint runs shorter than this between two shared edges are mitres of those and left out, metres
     */
    static List<Returns> of(List<Side> sides, double joint) {
        int start = firstLong(sides);
        if (start < 0 || sides.get(0).plane().curve().isPresent()) {
            return sides.stream().map(s -> new Returns(s, s.length())).toList();
        }
        List<List<Side>> runs = runs(sides, start);
        double[] lengths = runs.stream().mapToDouble(Returns::length).toArray();
        boolean[] gone = new boolean[runs.size()];
        for (int i = 0; i < runs.size(); i++) {
            if (lengths[i] < LEAST) {
                int own = i;
                int n = runs.size();
                List<Integer> beside = Stream.of((i + n - 1) % n, (i + 1) % n)
                        .filter(k -> k != own && isLong(runs.get(k)) && touch(runs.get(k), runs.get(own)))
                        .toList();
                gone[i] = !beside.isEmpty() || lengths[i] < joint;
                beside.stream()
                        .max(Comparator.comparingDouble(k -> length(runs.get(k))))
                        .ifPresent(k -> lengths[k] += length(runs.get(own)));
            }
        }
        List<Returns> left = new ArrayList<>();
        for (int i = 0; i < runs.size(); i++) {
            if (!gone[i]) {
                boolean one = runs.get(i).size() == 1;
                double length = lengths[i];
                runs.get(i).forEach(s -> left.add(new Returns(s, one ? length : s.length())));
            }
        }
        return left;
    }

    /** Long sides each by itself, short ones with those that follow without a break. */
    private static List<List<Side>> runs(List<Side> sides, int start) {
        List<List<Side>> runs = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            Side side = sides.get((start + i) % sides.size());
            List<Side> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
            if (side.length() < LEAST && !last.isEmpty() && !isLong(last) && follows(last, side)) {
                last.add(side);
            } else {
                runs.add(new ArrayList<>(List.of(side)));
            }
        }
        return runs;
    }

    private static int firstLong(List<Side> sides) {
        for (int i = 0; i < sides.size(); i++) {
            if (sides.get(i).length() >= LEAST) {
                return i;
            }
        }
        return -1;
    }

    private static boolean isLong(List<Side> run) {
        return run.get(0).length() >= LEAST;
    }

    private static boolean touch(List<Side> a, List<Side> b) {
        return follows(a, b.get(0)) || follows(b, a.get(0));
    }

    private static boolean follows(List<Side> run, Side side) {
        return run.get(run.size() - 1).to().distance(side.from()) < SAME;
    }

    private static double length(List<Side> run) {
        return run.stream().mapToDouble(Side::length).sum();
    }
}
