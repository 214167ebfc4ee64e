package runtrue.shape.mesh;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import runtrue.shape.Tolerances;

/**
 * Takes a stream of triangles apart into the solids that it was made of. Solids that touch share corners and edges, and
 * taken together their edges belong to four faces; but an engine writes one after another, so that a solid ends where
 * every edge so far has been run through as often in the one direction as in the other.
 */
final class TriangleRuns {
    private final double[] xyz;
    private final int[] first;
    private final List<List<int[][]>> runs = new ArrayList<>();
    private final Map<Long, Integer> balance = new HashMap<>();
    private List<int[][]> run = new ArrayList<>();
    private int unbalanced;

    private TriangleRuns(double[] xyz, Tolerances tolerances) {
        this.xyz = xyz;
        this.first = Welding.firstOf(xyz, tolerances.point());
    }

    /** Faces of each solid, a void with the solid before it; what never closes is the last one. */
    static List<List<int[][]>> of(double[] xyz, int[] corners, Tolerances tolerances) {
        TriangleRuns runs = new TriangleRuns(xyz, tolerances);
        for (int i = 0; i + 2 < corners.length; i += 3) {
            runs.add(corners[i], corners[i + 1], corners[i + 2]);
        }
        if (!runs.run.isEmpty()) {
            runs.runs.add(runs.run);
        }
        return runs.runs;
    }

    private void add(int a, int b, int c) {
        run.add(new int[][] {{a, b, c}});
        edge(first[a], first[b]);
        edge(first[b], first[c]);
        edge(first[c], first[a]);
        if (unbalanced == 0) {
            end();
        }
    }

    private void edge(int from, int to) {
        if (from == to) {
            return;
        }
        long key = (long) Math.min(from, to) << 32 | Math.max(from, to);
        int step = from < to ? 1 : -1;
        int before = balance.getOrDefault(key, 0);
        balance.put(key, before + step);
        unbalanced += Math.abs(before + step) - Math.abs(before);
    }

    private void end() {
        boolean hollow = Volumes.signed(xyz, run.toArray(new int[0][][])) < 0;
        if (hollow && !runs.isEmpty()) {
            runs.get(runs.size() - 1).addAll(run);
        } else {
            runs.add(run);
        }
        run = new ArrayList<>();
        balance.clear();
    }
}
