package runtrue.shape.mesh;

import java.util.Arrays;

/** Points nearer than a tolerance made one. */
final class Welding {
    private final double[] xyz;
    private final double tolerance;
    private final double cell;
    private final int[] heads;
    private final int[] next;

    private Welding(double[] xyz, double tolerance) {
        this.xyz = xyz;
        this.tolerance = tolerance;
        this.cell = 4 * tolerance;
        int points = xyz.length / 3;
        this.heads = new int[Integer.highestOneBit(Math.max(8, points)) * 2];
        this.next = new int[points];
        Arrays.fill(heads, -1);
    }

    /** For every point the number of the first point that it coincides with; that point's coordinates stay as they are. */
    static int[] firstOf(double[] xyz, double tolerance) {
        return new Welding(xyz, tolerance).run();
    }

    private int[] run() {
        int[] first = new int[next.length];
        for (int p = 0; p < first.length; p++) {
            int found = find(p);
            first[p] = found < 0 ? p : found;
            if (found < 0) {
                int slot = slot(index(xyz[3 * p]), index(xyz[3 * p + 1]), index(xyz[3 * p + 2]));
                next[p] = heads[slot];
                heads[slot] = p;
            }
        }
        return first;
    }

    private int find(int p) {
        double x = xyz[3 * p];
        double y = xyz[3 * p + 1];
        double z = xyz[3 * p + 2];
        for (long i = index(x - tolerance); i <= index(x + tolerance); i++) {
            for (long j = index(y - tolerance); j <= index(y + tolerance); j++) {
                for (long k = index(z - tolerance); k <= index(z + tolerance); k++) {
                    int found = findIn(slot(i, j, k), x, y, z);
                    if (found >= 0) {
                        return found;
                    }
                }
            }
        }
        return -1;
    }

    private int findIn(int slot, double x, double y, double z) {
        for (int q = heads[slot]; q >= 0; q = next[q]) {
            double dx = xyz[3 * q] - x;
            double dy = xyz[3 * q + 1] - y;
            double dz = xyz[3 * q + 2] - z;
            if (dx * dx + dy * dy + dz * dz <= tolerance * tolerance) {
                return q;
            }
        }
        return -1;
    }

    private long index(double coordinate) {
        return (long) Math.floor(coordinate / cell);
    }

    private int slot(long i, long j, long k) {
        long h = i * 0x9E3779B97F4A7C15L + j * 0xC2B2AE3D27D4EB4FL + k * 0x165667B19E3779F9L;
        h ^= h >>> 32;
        h *= 0x9E3779B97F4A7C15L;
        return (int) (h >>> 33) & (heads.length - 1);
    }
}
