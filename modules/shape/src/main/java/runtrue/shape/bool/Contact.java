package runtrue.shape.bool;

import java.util.List;
import runtrue.shape.mesh.Flat;

/** How a face lies to the parts of a mask in its plane. */
enum Contact {
    /** No area in common. */
    APART,
    /** The mask covers the whole face. */
    COVERED,
    /** Every part of the mask lies inside the face, clear of its edges, and has no holes. */
    HOLED,
    /** Edges touch or cross, or the nesting is more involved. */
    CROSSING;

    /** Looks at edges first, then, when none come near each other, at one point of each loop. */
    static Contact of(double[] xyz, Flat flat, int[][] face, List<int[][]> mask, double tolerance) {
        for (int[][] part : mask) {
            if (edgesMeet(xyz, flat, face, part, tolerance)) {
                return CROSSING;
            }
        }
        int partsInside = 0;
        boolean holes = false;
        boolean covered = false;
        for (int[][] part : mask) {
            partsInside += inside(xyz, flat, face, part[0][0]) ? 1 : 0;
            holes |= part.length > 1;
            covered |= inside(xyz, flat, part, face[0][0]);
        }
        if (partsInside == 0 && !covered) {
            return APART;
        }
        if (holes || (face.length > 1 && holesWithin(xyz, flat, face, mask))) {
            return CROSSING;
        }
        if (covered) {
            return partsInside == 0 ? COVERED : CROSSING;
        }
        return partsInside == mask.size() ? HOLED : CROSSING;
    }

    private static boolean holesWithin(double[] xyz, Flat flat, int[][] face, List<int[][]> mask) {
        for (int i = 1; i < face.length; i++) {
            for (int[][] part : mask) {
                if (inside(xyz, flat, part, face[i][0]) && !inside(xyz, flat, part, face[0][0])) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean inside(double[] xyz, Flat flat, int[][] face, int point) {
        boolean inside = false;
        for (int[] loop : face) {
            inside ^= flat.within(xyz, loop, flat.u(xyz, point), flat.v(xyz, point));
        }
        return inside;
    }

    private static boolean edgesMeet(double[] xyz, Flat flat, int[][] face, int[][] part, double tolerance) {
        for (int[] loop : face) {
            for (int[] other : part) {
                if (loopsMeet(xyz, flat, loop, other, tolerance)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean loopsMeet(double[] xyz, Flat flat, int[] loop, int[] other, double tolerance) {
        int a = loop[loop.length - 1];
        for (int b : loop) {
            int c = other[other.length - 1];
            for (int d : other) {
                if (Segments.near(
                        flat.u(xyz, a),
                        flat.v(xyz, a),
                        flat.u(xyz, b),
                        flat.v(xyz, b),
                        flat.u(xyz, c),
                        flat.v(xyz, c),
                        flat.u(xyz, d),
                        flat.v(xyz, d),
                        tolerance)) {
                    return true;
                }
                c = d;
            }
            a = b;
        }
        return false;
    }
}
