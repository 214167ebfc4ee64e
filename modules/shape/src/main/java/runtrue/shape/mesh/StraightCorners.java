package runtrue.shape.mesh;

import java.util.Arrays;

/** Takes out corners that lie on a straight edge of every face they belong to, so that outlines have true corners only. */
final class StraightCorners {
    private final double[] xyz;
    private final int[][][] faces;
    private final double tolerance;
    private final int[] first;
    private final int[] second;
    private final boolean[] needed;

    private StraightCorners(double[] xyz, int[][][] faces, double tolerance) {
        this.xyz = xyz;
        this.faces = faces;
        this.tolerance = tolerance;
        this.first = new int[xyz.length / 3];
        this.second = new int[first.length];
        this.needed = new boolean[first.length];
    }

    static int[][][] removed(double[] xyz, int[][][] faces, double tolerance) {
        return new StraightCorners(xyz, faces, tolerance).run();
    }

    private int[][][] run() {
        Arrays.fill(first, -1);
        Arrays.fill(second, -1);
        for (int[][] face : faces) {
            for (int[] loop : face) {
                noteNeighbours(loop);
            }
        }
        int[][][] result = faces.clone();
        for (int f = 0; f < faces.length; f++) {
            int[][] loops = faces[f].clone();
            for (int i = 0; i < loops.length; i++) {
                loops[i] = kept(faces[f][i]);
            }
            result[f] = loops;
        }
        return result;
    }

    private void noteNeighbours(int[] loop) {
        for (int i = 0; i < loop.length; i++) {
            note(loop[i], loop[(i + 1) % loop.length]);
            note(loop[i], loop[(i + loop.length - 1) % loop.length]);
        }
    }

    private void note(int p, int neighbour) {
        if (first[p] < 0 || first[p] == neighbour) {
            first[p] = neighbour;
        } else if (second[p] < 0 || second[p] == neighbour) {
            second[p] = neighbour;
        } else {
            needed[p] = true;
        }
    }

    private int[] kept(int[] loop) {
        int[] result = new int[loop.length];
        int n = 0;
        for (int p : loop) {
            if (needed[p] || first[p] < 0 || second[p] < 0 || !straight(first[p], p, second[p])) {
                result[n++] = p;
            }
        }
        return n < 3 || n == loop.length ? loop : Arrays.copyOf(result, n);
    }

    private boolean straight(int a, int p, int b) {
        double length2 = 0;
        double along = 0;
        double own2 = 0;
        for (int k = 0; k < 3; k++) {
            double ab = xyz[3 * b + k] - xyz[3 * a + k];
            double ap = xyz[3 * p + k] - xyz[3 * a + k];
            length2 += ab * ab;
            along += ab * ap;
            own2 += ap * ap;
        }
        if (along <= 0 || along >= length2) {
            return false;
        }
        return own2 - along * along / length2 <= tolerance * tolerance;
    }
}
