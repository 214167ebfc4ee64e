package runtrue.shape.mesh;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What is done to single loops of point numbers. */
public final class Loops {
    private Loops() {}

    /** All loops of a face walked the other way, each still starting at its first point. */
    public static int[][] turned(int[][] face) {
        int[][] result = new int[face.length][];
        for (int i = 0; i < face.length; i++) {
            result[i] = turned(face[i]);
        }
        return result;
    }

    public static int[] turned(int[] loop) {
        int[] result = new int[loop.length];
        result[0] = loop[0];
        for (int i = 1; i < loop.length; i++) {
            result[i] = loop[loop.length - i];
        }
        return result;
    }

    /** Repeated neighbours and spikes (a, b, a) taken out; shorter than three when nothing is left. */
    public static int[] cleaned(int[] loop) {
        if (simple(loop)) {
            return loop;
        }
        int[] stack = new int[loop.length];
        int n = 0;
        for (int p : loop) {
            stack[n++] = p;
            n = reduced(stack, n);
        }
        int first = 0;
        while (n - first > 2) {
            if (stack[first] == stack[n - 1]) {
                n--;
            } else if (stack[first] == stack[n - 2]) {
                n -= 2;
            } else if (stack[first + 1] == stack[n - 1]) {
                first += 1;
                n -= 1;
            } else {
                break;
            }
        }
        return Arrays.copyOfRange(stack, first, n);
    }

    private static int reduced(int[] stack, int size) {
        int n = size;
        if (n > 1 && stack[n - 1] == stack[n - 2]) {
            return n - 1;
        }
        if (n > 2 && stack[n - 1] == stack[n - 3]) {
            n -= 2;
        }
        return n;
    }

    private static boolean simple(int[] loop) {
        int n = loop.length;
        for (int i = 0; i < n; i++) {
            int next = loop[(i + 1) % n];
            if (loop[i] == next || loop[i] == loop[(i + 2) % n]) {
                return false;
            }
        }
        return n > 2;
    }

    /**
     * Sorts loops into faces: each outline (counter-clockwise about the normal) with the holes that lie within it and in
     * no smaller outline. A hole that no outline holds is left out.
     */
    public static List<int[][]> nested(double[] xyz, List<int[]> loops, FacePlane plane) {
        Flat flat = Flat.along(plane);
        List<int[]> outlines = new ArrayList<>();
        List<int[]> holes = new ArrayList<>();
        for (int[] loop : loops) {
            (flat.area(xyz, loop) > 0 ? outlines : holes).add(loop);
        }
        if (holes.isEmpty()) {
            List<int[][]> faces = new ArrayList<>(outlines.size());
            for (int[] loop : outlines) {
                faces.add(new int[][] {loop});
            }
            return faces;
        }
        List<List<int[]>> groups = new ArrayList<>();
        for (int[] outline : outlines) {
            groups.add(new ArrayList<>(List.of(outline)));
        }
        for (int[] hole : holes) {
            int host = host(xyz, outlines, hole, flat);
            if (host >= 0) {
                groups.get(host).add(hole);
            }
        }
        List<int[][]> faces = new ArrayList<>(groups.size());
        for (List<int[]> group : groups) {
            faces.add(group.toArray(new int[0][]));
        }
        return faces;
    }

    private static int host(double[] xyz, List<int[]> outlines, int[] hole, Flat flat) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outlines.size(); i++) {
            double area = flat.area(xyz, outlines.get(i));
            if (area < least && flat.mostlyWithin(xyz, hole, outlines.get(i))) {
                best = i;
                least = area;
            }
        }
        return best;
    }
}
