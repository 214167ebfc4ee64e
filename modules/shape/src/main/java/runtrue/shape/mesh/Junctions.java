package runtrue.shape.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * T-junctions: a corner of one face on the middle of another's edge. The corner is put into that edge, so that both
 * faces share whole edges.
 */
final class Junctions {
    /** Above this many rim edges nothing is done: the search would cost more than the answer is worth. */
    private static final int MOST_RIM_EDGES = 200_000;

    private final double[] xyz;
    private final double tolerance;
    private final int[] corners;

    private Junctions(double[] xyz, int[] corners, double tolerance) {
        this.xyz = xyz;
        this.corners = corners;
        this.tolerance = tolerance;
    }

    /** The faces with corners put in; the same array when there was nothing to do. */
    static int[][][] joined(double[] xyz, int[][][] faces, EdgeMap edges, double tolerance) {
        boolean[] rim = new boolean[edges.size()];
        int rims = 0;
        for (int e = 0; e < rim.length; e++) {
            rim[e] = edges.count[edges.leader[e]] % 2 == 1;
            rims += rim[e] ? 1 : 0;
        }
        if (rims == 0 || rims > MOST_RIM_EDGES) {
            return faces;
        }
        int[] ends = new int[2 * rims];
        int n = 0;
        for (int e = 0; e < rim.length; e++) {
            if (rim[e]) {
                ends[n++] = edges.from[e];
                ends[n++] = edges.to[e];
            }
        }
        return new Junctions(xyz, sortedByX(xyz, ends), tolerance).joined(faces, rim);
    }

    private static int[] sortedByX(double[] xyz, int[] points) {
        return Arrays.stream(points)
                .distinct()
                .boxed()
                .sorted((a, b) -> Double.compare(xyz[3 * a], xyz[3 * b]))
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private int[][][] joined(int[][][] faces, boolean[] rim) {
        int[][][] result = faces.clone();
        int e = 0;
        for (int f = 0; f < faces.length; f++) {
            int[][] loops = faces[f].clone();
            for (int i = 0; i < loops.length; i++) {
                loops[i] = joined(faces[f][i], rim, e);
                e += faces[f][i].length;
            }
            result[f] = loops;
        }
        return result;
    }

    private int[] joined(int[] loop, boolean[] rim, int firstEdge) {
        List<Integer> points = new ArrayList<>(loop.length + 4);
        for (int i = 0; i < loop.length; i++) {
            points.add(loop[i]);
            if (rim[firstEdge + i]) {
                points.addAll(between(loop[i], loop[(i + 1) % loop.length]));
            }
        }
        return points.size() == loop.length
                ? loop
                : points.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Corners on the inside of an edge, in the order from its start. */
    private List<Integer> between(int a, int b) {
        double low = Math.min(xyz[3 * a], xyz[3 * b]) - tolerance;
        double high = Math.max(xyz[3 * a], xyz[3 * b]) + tolerance;
        List<Integer> found = new ArrayList<>();
        for (int i = firstFrom(low); i < corners.length && xyz[3 * corners[i]] <= high; i++) {
            int p = corners[i];
            if (p != a && p != b && on(a, b, p)) {
                found.add(p);
            }
        }
        found.sort((p, q) -> Double.compare(along(a, b, p), along(a, b, q)));
        return found;
    }

    private int firstFrom(double x) {
        int low = 0;
        int high = corners.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (xyz[3 * corners[middle]] < x) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private double along(int a, int b, int p) {
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            sum += (xyz[3 * b + k] - xyz[3 * a + k]) * (xyz[3 * p + k] - xyz[3 * a + k]);
        }
        return sum;
    }

    private boolean on(int a, int b, int p) {
        double length2 = along(a, b, b);
        double t = along(a, b, p) / length2;
        if (!(t > 0 && t < 1)) {
            return false;
        }
        double off2 = 0;
        for (int k = 0; k < 3; k++) {
            double foot = xyz[3 * a + k] + t * (xyz[3 * b + k] - xyz[3 * a + k]);
            off2 += (xyz[3 * p + k] - foot) * (xyz[3 * p + k] - foot);
        }
        return off2 <= tolerance * tolerance;
    }
}
