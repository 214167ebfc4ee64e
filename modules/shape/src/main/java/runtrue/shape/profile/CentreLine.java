package runtrue.shape.profile;

import java.util.List;
import runtrue.shape.ShapeException;

/** Thin-walled profiles given by their centre line and thickness. */
final class CentreLine {
    private CentreLine() {}

    /** The line moved half the thickness to either side, with mitred corners and square ends. */
    static Profile thickened(String name, double[] line, double thickness) {
        double[] xy = line;
        int n = xy.length / 2;
        if (n < 2 || !(thickness > 0)) {
            throw new ShapeException("The centre line profile " + name + " has no length or no thickness.");
        }
        double[] ring = new double[4 * n];
        for (int i = 0; i < n; i++) {
            double[] offset = offset(xy, i, 0.5 * thickness);
            ring[2 * i] = xy[2 * i] + offset[0];
            ring[2 * i + 1] = xy[2 * i + 1] + offset[1];
            int mirrored = 2 * (2 * n - 1 - i);
            ring[mirrored] = xy[2 * i] - offset[0];
            ring[mirrored + 1] = xy[2 * i + 1] - offset[1];
        }
        return new Profile(name, Ring.of(ring, 0), List.of());
    }

    private static double[] offset(double[] xy, int i, double distance) {
        int n = xy.length / 2;
        double[] before = normal(xy, Math.max(0, i - 1), Math.max(1, i));
        double[] after = normal(xy, Math.min(n - 2, i), Math.min(n - 1, i + 1));
        double sumX = before[0] + after[0];
        double sumY = before[1] + after[1];
        double square = sumX * sumX + sumY * sumY;
        double scale = square > 1e-9 ? 2 * distance / square : 0;
        return new double[] {scale * sumX, scale * sumY};
    }

    private static double[] normal(double[] xy, int a, int b) {
        double dx = xy[2 * b] - xy[2 * a];
        double dy = xy[2 * b + 1] - xy[2 * a + 1];
        double length = Math.hypot(dx, dy);
        return length > 0 ? new double[] {-dy / length, dx / length} : new double[] {0, 0};
    }
}
