package runtrue.shape.mesh;

import java.util.Arrays;

/**
 * The directed edges of faces, numbered face by face and loop by loop, each knowing the others that run between the same
 * two points. Arrays and open addressing instead of maps of objects: a mesh may have a million edges.
 */
final class EdgeMap {
    /** Start and end point and face of every directed edge. */
    final int[] from;

    final int[] to;
    final int[] face;

    /** The edges of face f are numbered {@code start[f]} to {@code start[f + 1]}, the end excluded. */
    final int[] start;

    /** First edge between the same two points, in either direction. */
    final int[] leader;

    /** Next edge between the same two points, -1 after the last. */
    final int[] sibling;

    /** At leaders: how many edges run between the two points. */
    final int[] count;

    EdgeMap(int[][][] faces) {
        start = new int[faces.length + 1];
        for (int f = 0; f < faces.length; f++) {
            start[f + 1] = start[f];
            for (int[] loop : faces[f]) {
                start[f + 1] += loop.length;
            }
        }
        int edges = start[faces.length];
        from = new int[edges];
        to = new int[edges];
        face = new int[edges];
        leader = new int[edges];
        sibling = new int[edges];
        count = new int[edges];
        fill(faces);
        link();
    }

    private void fill(int[][][] faces) {
        int e = 0;
        for (int f = 0; f < faces.length; f++) {
            for (int[] loop : faces[f]) {
                for (int i = 0; i < loop.length; i++) {
                    from[e] = loop[i];
                    to[e] = loop[i + 1 < loop.length ? i + 1 : 0];
                    face[e++] = f;
                }
            }
        }
    }

    private void link() {
        int[] table = new int[Integer.highestOneBit(Math.max(8, from.length)) * 2];
        int[] last = new int[from.length];
        Arrays.fill(table, -1);
        Arrays.fill(sibling, -1);
        for (int e = 0; e < from.length; e++) {
            int slot = slot(e, table.length);
            while (table[slot] >= 0 && !sameEnds(table[slot], e)) {
                slot = (slot + 1) & (table.length - 1);
            }
            int first = table[slot];
            if (first < 0) {
                table[slot] = e;
                first = e;
            } else {
                sibling[last[first]] = e;
            }
            last[first] = e;
            leader[e] = first;
            count[first]++;
        }
    }

    private int slot(int e, int size) {
        long h = Math.min(from[e], to[e]) * 0x9E3779B97F4A7C15L + Math.max(from[e], to[e]) * 0xC2B2AE3D27D4EB4FL;
        h ^= h >>> 29;
        return (int) ((h * 0x9E3779B97F4A7C15L) >>> 33) & (size - 1);
    }

    private boolean sameEnds(int a, int b) {
        return (from[a] == from[b] && to[a] == to[b]) || (from[a] == to[b] && to[a] == from[b]);
    }

    int size() {
        return from.length;
    }

    /** The other edge between the same points when there are exactly two, else -1. */
    int partner(int e) {
        int first = leader[e];
        if (count[first] != 2) {
            return -1;
        }
        return first == e ? sibling[first] : first;
    }

    /** Whether edges run equally often both ways between the two points of a leader. */
    boolean balanced(int first) {
        int balance = 0;
        for (int e = first; e >= 0; e = sibling[e]) {
            balance += from[e] == from[first] ? 1 : -1;
        }
        return balance == 0;
    }

    /** Whether every edge is balanced: the surface has no rim. */
    boolean closed() {
        for (int e = 0; e < from.length; e++) {
            if (leader[e] == e && !balanced(e)) {
                return false;
            }
        }
        return from.length > 0;
    }
}
