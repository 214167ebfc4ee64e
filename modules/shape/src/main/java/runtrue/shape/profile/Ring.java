package runtrue.shape.profile;

import java.util.Arrays;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;

/** A closed ring of straight edges in a plane; the first corner is not repeated. Immutable. */
public final class Ring {
    /** Corners farther than this part of an edge's length from a straight line are corners. */
    private static final double STRAIGHT = 1e-9;

    private final double[] xy;

    private Ring(double[] xy) {
        this.xy = xy;
    }

    /**
     * A ring through corners.
     *
     * @param xy two coordinates a corner; a repeated last corner, repeated neighbours and corners on a straight edge are
     *     taken out
     * @param tolerance in the units of the corners: corners this near to each other are one
     */
    public static Ring of(double[] xy, double tolerance) {
        double[] kept = new double[xy.length];
        int n = 0;
        for (int i = 0; i < xy.length; i += 2) {
            if (n == 0 || !same(kept, n - 2, xy, i, tolerance)) {
                kept[n++] = xy[i];
                kept[n++] = xy[i + 1];
            }
        }
        while (n > 2 && same(kept, n - 2, kept, 0, tolerance)) {
            n -= 2;
        }
        return new Ring(withoutStraight(Arrays.copyOf(kept, n)));
    }

    private static boolean same(double[] a, int i, double[] b, int j, double tolerance) {
        return Math.hypot(a[i] - b[j], a[i + 1] - b[j + 1]) <= tolerance;
    }

    private static double[] withoutStraight(double[] xy) {
        int n = xy.length;
        double[] kept = new double[n];
        int m = 0;
        for (int i = 0; i < n; i += 2) {
            int before = (i + n - 2) % n;
            int after = (i + 2) % n;
            double au = xy[i] - xy[before];
            double av = xy[i + 1] - xy[before + 1];
            double bu = xy[after] - xy[i];
            double bv = xy[after + 1] - xy[i + 1];
            boolean straight = Math.abs(au * bv - av * bu) <= STRAIGHT * (au * au + av * av + bu * bu + bv * bv)
                    && au * bu + av * bv > 0;
            if (!straight) {
                kept[m++] = xy[i];
                kept[m++] = xy[i + 1];
            }
        }
        return m == n ? xy : Arrays.copyOf(kept, m);
    }

    /** Number of corners. */
    public int size() {
        return xy.length / 2;
    }

    public double x(int corner) {
        return xy[2 * corner];
    }

    public double y(int corner) {
        return xy[2 * corner + 1];
    }

    /** Area, positive when counter-clockwise. */
    public double signedArea() {
        double sum = 0;
        for (int i = 1; i + 1 < size(); i++) {
            sum += (x(i) - x(0)) * (y(i + 1) - y(0)) - (y(i) - y(0)) * (x(i + 1) - x(0));
        }
        return 0.5 * sum;
    }

    Ring counterClockwise() {
        return signedArea() < 0 ? reversed() : this;
    }

    Ring reversed() {
        double[] result = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            result[xy.length - 2 - i] = xy[i];
            result[xy.length - 1 - i] = xy[i + 1];
        }
        return new Ring(result);
    }

    Ring moved(AffineTransformMatrix3D transform) {
        double[] result = new double[xy.length];
        for (int i = 0; i < xy.length; i += 2) {
            result[i] = transform.applyX(xy[i], xy[i + 1], 0);
            result[i + 1] = transform.applyY(xy[i], xy[i + 1], 0);
        }
        return new Ring(result);
    }

    /** Whether the ring turns left everywhere (counter-clockwise rings only). */
    public boolean convex() {
        int n = size();
        for (int i = 0; i < n; i++) {
            int b = (i + 1) % n;
            int c = (i + 2) % n;
            if ((x(b) - x(i)) * (y(c) - y(b)) - (y(b) - y(i)) * (x(c) - x(b)) < 0) {
                return false;
            }
        }
        return true;
    }

    /** Whether a place lies within the ring, by the parity of crossings. */
    public boolean within(double px, double py) {
        boolean inside = false;
        int last = size() - 1;
        for (int i = 0; i < size(); i++) {
            if (y(last) > py != y(i) > py && px < x(last) + (py - y(last)) / (y(i) - y(last)) * (x(i) - x(last))) {
                inside = !inside;
            }
            last = i;
        }
        return inside;
    }
}
