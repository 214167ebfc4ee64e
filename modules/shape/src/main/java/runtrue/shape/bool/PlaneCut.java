package runtrue.shape.bool;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import runtrue.shape.mesh.FacePlane;
import runtrue.shape.mesh.Loops;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.mesh.Points;
import runtrue.shape.mesh.Tracing;

/**
 * A mesh cut by a plane: the part on the side of the normal with its cap ({@link #keptPart}), or the section alone
 * ({@link #section}). Faces are cut whole, with their holes, and keep their exact corners.
 *
 * <p>Corners within the tolerance of the plane count as lying below it. That is the same as moving the plane up by a hair,
 * so a face in the plane never appears twice: it goes, and the cap takes its place. Corners in the plane are taken over as
 * they are.
 */
public final class PlaneCut {
    private final Mesh mesh;
    private final FacePlane plane;
    private final boolean[] above;
    private final boolean[] on;
    private final double[] distance;
    private final Points points;
    private final Map<Long, Integer> crossings = new HashMap<>();
    private final List<int[][]> kept = new ArrayList<>();

    /** Edges of the cap, two points each, material to the left seen from above the plane. */
    private int[] rim = new int[32];

    private int rimSize;

    private PlaneCut(Mesh mesh, FacePlane plane, double tolerance) {
        this.mesh = mesh;
        this.plane = plane;
        this.points = new Points(mesh.xyz());
        int n = points.size();
        above = new boolean[n];
        on = new boolean[n];
        distance = new double[n];
        for (int p = 0; p < n; p++) {
            distance[p] = plane.distance(mesh.xyz(), p);
            above[p] = distance[p] > tolerance;
            on[p] = Math.abs(distance[p]) <= tolerance;
        }
    }

    /**
     * The part of a mesh on the side that the plane's normal points to.
     *
     * @param tolerance metres; corners this near to the plane lie in it
     * @return an empty mesh when nothing is left; closed when the mesh was and the cap closes
     */
    public static Mesh keptPart(Mesh mesh, FacePlane plane, double tolerance) {
        PlaneCut cut = new PlaneCut(mesh, plane, tolerance);
        if (cut.allAbove()) {
            return mesh;
        }
        for (int[][] face : mesh.faces()) {
            cut.cut(face, true);
        }
        return cut.capped();
    }

    /**
     * The section of a closed mesh just above a plane.
     *
     * @return its faces over points of their own, outlines counter-clockwise about the plane's normal
     */
    public static Mesh section(Mesh mesh, FacePlane plane, double tolerance) {
        PlaneCut cut = new PlaneCut(mesh, plane, tolerance);
        for (int[][] face : mesh.faces()) {
            cut.cut(face, false);
        }
        double[] xyz = cut.points.toArray();
        Tracing.Traced traced = cut.traced(xyz, plane);
        return new Mesh(xyz, Loops.nested(xyz, traced.loops(), plane).toArray(new int[0][][]), traced.complete());
    }

    private boolean allAbove() {
        for (int[][] face : mesh.faces()) {
            for (int p : face[0]) {
                if (!above[p]) {
                    return false;
                }
            }
        }
        return true;
    }

    private Mesh capped() {
        double[] xyz = points.toArray();
        FacePlane down = plane.flipped();
        for (int i = 0; i < rimSize; i += 2) {
            int a = rim[i];
            rim[i] = rim[i + 1];
            rim[i + 1] = a;
        }
        Tracing.Traced traced = traced(xyz, down);
        if (mesh.closed() && traced.complete()) {
            kept.addAll(Loops.nested(xyz, traced.loops(), down));
        }
        return new Mesh(xyz, kept.toArray(new int[0][][]), mesh.closed() && traced.complete());
    }

    private Tracing.Traced traced(double[] xyz, FacePlane side) {
        Map<Long, Integer> count = new HashMap<>();
        for (int i = 0; i < rimSize; i += 2) {
            count.merge(key(rim[i], rim[i + 1]), 1, Integer::sum);
        }
        int[] from = new int[rimSize / 2];
        int[] to = new int[rimSize / 2];
        int n = 0;
        for (int i = 0; i < rimSize; i += 2) {
            long back = key(rim[i + 1], rim[i]);
            int others = count.getOrDefault(back, 0);
            if (others > 0) {
                count.put(back, others - 1);
                count.merge(key(rim[i], rim[i + 1]), -1, Integer::sum);
            }
        }
        for (int i = 0; i < rimSize; i += 2) {
            long own = key(rim[i], rim[i + 1]);
            int left = count.getOrDefault(own, 0);
            if (left > 0) {
                count.put(own, left - 1);
                from[n] = rim[i];
                to[n++] = rim[i + 1];
            }
        }
        return Tracing.loops(xyz, side, Arrays.copyOf(from, n), Arrays.copyOf(to, n));
    }

    private static long key(int a, int b) {
        return ((long) a << 32) | b;
    }

    private void cut(int[][] face, boolean keep) {
        int sides = 0;
        for (int[] loop : face) {
            for (int p : loop) {
                sides |= above[p] ? 1 : 2;
            }
        }
        if (sides == 1 && keep) {
            kept.add(face);
        } else if (sides == 3) {
            new FaceCut(face).run(keep);
        }
    }

    /** The point where the edge between a corner above and one below meets the plane. */
    private int crossing(int a, int b) {
        if (on[a]) {
            return a;
        }
        if (on[b]) {
            return b;
        }
        int low = Math.min(a, b);
        int high = Math.max(a, b);
        Integer known = crossings.get(key(low, high));
        if (known != null) {
            return known;
        }
        double t = distance[low] / (distance[low] - distance[high]);
        int point = points.add(
                points.x(low) + t * (points.x(high) - points.x(low)),
                points.y(low) + t * (points.y(high) - points.y(low)),
                points.z(low) + t * (points.z(high) - points.z(low)));
        crossings.put(key(low, high), point);
        return point;
    }

    private void addRim(int a, int b) {
        if (a == b) {
            return;
        }
        if (rimSize == rim.length) {
            rim = Arrays.copyOf(rim, 2 * rimSize);
        }
        rim[rimSize++] = a;
        rim[rimSize++] = b;
    }

    /** One face that has corners on both sides. */
    private final class FaceCut {
        private final int[][] face;
        private final List<int[]> chains = new ArrayList<>();
        private final List<int[]> whole = new ArrayList<>();
        private final FacePlane own;

        FaceCut(int[][] face) {
            this.face = face;
            this.own = FacePlane.of(mesh.xyz(), face[0]);
        }

        /**
         * Each run of corners above the plane becomes a chain from the point where it enters to the point where it leaves.
         * Along the line of cut, in the direction that has the kept part on its left, leaving and entering points take
         * turns; so the first that leaves is tied to the first that enters, the second to the second, and so on.
         */
        void run(boolean keep) {
            for (int[] loop : face) {
                split(loop);
            }
            int[] leaving = order(true);
            int[] entering = order(false);
            int[] nextChain = new int[chains.size()];
            for (int i = 0; i < leaving.length; i++) {
                int[] chain = chains.get(leaving[i]);
                int a = chain[chain.length - 1];
                int b = chains.get(entering[i])[0];
                addRim(a, b);
                nextChain[leaving[i]] = entering[i];
            }
            if (keep) {
                kept.addAll(faces(nextChain));
            }
        }

        private void split(int[] loop) {
            int n = loop.length;
            int first = -1;
            for (int i = 0; i < n && first < 0; i++) {
                if (!above[loop[i]] && above[loop[(i + 1) % n]]) {
                    first = i;
                }
            }
            if (first < 0) {
                if (above[loop[0]]) {
                    whole.add(loop);
                }
                return;
            }
            int[] chain = new int[n + 1];
            int size = 0;
            for (int k = 0; k < n; k++) {
                int a = loop[(first + k) % n];
                int b = loop[(first + k + 1) % n];
                if (above[a]) {
                    chain[size++] = a;
                }
                if (above[a] != above[b]) {
                    chain[size++] = crossing(a, b);
                    if (above[a]) {
                        chains.add(Arrays.copyOf(chain, size));
                        size = 0;
                    }
                }
            }
        }

        private int[] order(boolean ends) {
            double sx = plane.ny() * own.nz() - plane.nz() * own.ny();
            double sy = plane.nz() * own.nx() - plane.nx() * own.nz();
            double sz = plane.nx() * own.ny() - plane.ny() * own.nx();
            double[] along = new double[chains.size()];
            for (int i = 0; i < along.length; i++) {
                int[] chain = chains.get(i);
                int p = ends ? chain[chain.length - 1] : chain[0];
                along[i] = sx * points.x(p) + sy * points.y(p) + sz * points.z(p);
            }
            return sorted(along);
        }

        /** Numbers in the order of their values; by insertion, for there are seldom more than two. */
        private static int[] sorted(double[] values) {
            int[] order = new int[values.length];
            for (int i = 0; i < order.length; i++) {
                int k = i;
                while (k > 0 && values[order[k - 1]] > values[i]) {
                    order[k] = order[k - 1];
                    k--;
                }
                order[k] = i;
            }
            return order;
        }

        private List<int[][]> faces(int[] nextChain) {
            List<int[]> loops = new ArrayList<>(whole);
            boolean[] used = new boolean[nextChain.length];
            int[] buffer =
                    new int[chains.stream().mapToInt(chain -> chain.length).sum()];
            for (int i = 0; i < nextChain.length; i++) {
                int size = 0;
                for (int c = i; !used[c]; c = nextChain[c]) {
                    used[c] = true;
                    int[] chain = chains.get(c);
                    System.arraycopy(chain, 0, buffer, size, chain.length);
                    size += chain.length;
                }
                int[] loop = Loops.cleaned(Arrays.copyOf(buffer, size));
                if (loop.length > 2) {
                    loops.add(loop);
                }
            }
            if (loops.size() == 1) {
                return List.<int[][]>of(new int[][] {loops.get(0)});
            }
            return Loops.nested(points.raw(), loops, own);
        }
    }
}
