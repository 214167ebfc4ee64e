package runtrue.geometryserver;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Triangles in world metres, corners counter-clockwise seen from outside. */
record TriangleMesh(List<Vector3D[]> triangles) {
    private static final double LEAST_UP = 0.05;

    /** Coordinates come as 32-bit floats: corners nearer than this, metres, are one. */
    private static final double WELD = 2e-4;

    /**
     * From local coordinates.
     *
     * @param matrix local to world, 16 numbers by columns, translation in 12 to 14
     */
    static TriangleMesh of(float[] xyz, int[] corners, double[] matrix, double metresPerUnit) {
        List<Vector3D[]> triangles = new ArrayList<>();
        for (int i = 0; i + 2 < corners.length; i += 3) {
            Vector3D[] triangle = new Vector3D[3];
            for (int k = 0; k < 3; k++) {
                triangle[k] = world(xyz, 3 * corners[i + k], matrix).multiply(metresPerUnit);
            }
            triangles.add(triangle);
        }
        return new TriangleMesh(triangles);
    }

    private static Vector3D world(float[] xyz, int at, double[] m) {
        double x = xyz[at];
        double y = xyz[at + 1];
        double z = xyz[at + 2];
        return Vector3D.of(
                m[0] * x + m[4] * y + m[8] * z + m[12],
                m[1] * x + m[5] * y + m[9] * z + m[13],
                m[2] * x + m[6] * y + m[10] * z + m[14]);
    }

    /** By the divergence theorem; only a closed mesh has one. */
    double volume() {
        Vector3D base = triangles.get(0)[0];
        double sum = 0;
        for (Vector3D[] t : triangles) {
            sum += doubleArea(t).dot(t[0].subtract(base));
        }
        return sum / 6;
    }

    /** Area of what looks upward, square metres. */
    double upwardArea() {
        return triangles.stream()
                .map(TriangleMesh::doubleArea)
                .filter(a -> a.getZ() > LEAST_UP * a.norm())
                .mapToDouble(a -> a.norm() / 2)
                .sum();
    }

    /** Whether every edge is run through once in each direction, or as often in the one as in the other. */
    boolean closed() {
        Map<List<Long>, Integer> balance = new HashMap<>();
        for (Vector3D[] t : triangles) {
            for (int k = 0; k < 3; k++) {
                List<Long> from = key(t[k]);
                List<Long> to = key(t[(k + 1) % 3]);
                List<Long> forth = new ArrayList<>(from);
                forth.addAll(to);
                List<Long> back = new ArrayList<>(to);
                back.addAll(from);
                balance.merge(forth, 1, Integer::sum);
                balance.merge(back, -1, Integer::sum);
            }
        }
        return balance.values().stream().allMatch(n -> n == 0);
    }

    private static List<Long> key(Vector3D p) {
        return List.of(Math.round(p.getX() / WELD), Math.round(p.getY() / WELD), Math.round(p.getZ() / WELD));
    }

    private static Vector3D doubleArea(Vector3D[] t) {
        return t[1].subtract(t[0]).cross(t[2].subtract(t[0]));
    }
}
