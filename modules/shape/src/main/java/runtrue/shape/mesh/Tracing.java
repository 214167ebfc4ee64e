package runtrue.shape.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Directed edges in one plane strung into loops. */
public final class Tracing {
    private final double[] xyz;
    private final Flat flat;
    private final int[] from;
    private final int[] to;
    private final boolean[] used;
    private final long[] byStart;

    private Tracing(double[] xyz, FacePlane plane, int[] from, int[] to) {
        this.xyz = xyz;
        this.flat = Flat.along(plane);
        this.from = from;
        this.to = to;
        this.used = new boolean[from.length];
        this.byStart = new long[from.length];
        for (int e = 0; e < from.length; e++) {
            byStart[e] = ((long) from[e] << 32) | e;
        }
        Arrays.sort(byStart);
    }

    /**
     * The loops, and whether every edge found its place in one.
     *
     * @param loops area to the left of each edge seen against the normal, spikes taken out
     */
    public record Traced(List<int[]> loops, boolean complete) {}

    /** Strings edges together; where several leave a point, the one farthest to the left is taken. */
    public static Traced loops(double[] xyz, FacePlane plane, int[] from, int[] to) {
        return new Tracing(xyz, plane, from, to).run();
    }

    private Traced run() {
        List<int[]> loops = new ArrayList<>();
        boolean complete = true;
        int[] chain = new int[from.length];
        for (long key : byStart) {
            int e = (int) key;
            int size = 0;
            int first = e;
            while (e >= 0 && !used[e]) {
                used[e] = true;
                chain[size++] = from[e];
                e = to[e] == from[first] && noLeftmostElse(e, first) ? first : next(e);
            }
            if (size == 0) {
                continue;
            }
            if (e != first) {
                complete = false;
                continue;
            }
            int[] loop = Loops.cleaned(Arrays.copyOf(chain, size));
            if (loop.length > 2) {
                loops.add(loop);
            }
        }
        return new Traced(loops, complete);
    }

    /** At the loop's first point: whether closing it is the turn farthest to the left. */
    private boolean noLeftmostElse(int e, int first) {
        int best = next(e);
        return best < 0 || turn(e, first) >= turn(e, best);
    }

    private int next(int e) {
        int at = Arrays.binarySearch(byStart, (long) to[e] << 32);
        int i = at < 0 ? -at - 1 : at;
        int best = -1;
        double most = Double.NEGATIVE_INFINITY;
        for (; i < byStart.length && (int) (byStart[i] >>> 32) == to[e]; i++) {
            int candidate = (int) byStart[i];
            if (used[candidate]) {
                continue;
            }
            double turn = turn(e, candidate);
            if (best < 0 || turn > most) {
                best = candidate;
                most = turn;
            }
        }
        return best;
    }

    /** Turn from one edge to another that leaves its end, in radians, left positive; turning back is the least. */
    private double turn(int e, int next) {
        double au = flat.u(xyz, to[e]) - flat.u(xyz, from[e]);
        double av = flat.v(xyz, to[e]) - flat.v(xyz, from[e]);
        double bu = flat.u(xyz, to[next]) - flat.u(xyz, from[next]);
        double bv = flat.v(xyz, to[next]) - flat.v(xyz, from[next]);
        if (to[next] == from[e]) {
            return -Math.PI;
        }
        return Math.atan2(au * bv - av * bu, au * bu + av * bv);
    }
}
