package runtrue.shape.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.DeBoor;
import runtrue.shape.curve.Fineness;

/** A B-spline surface, rational or not, by de Boor's algorithm on homogeneous coordinates in one direction, then the other. */
final class Spline implements Surface {
    /** Chords in each knot span that are tried for how far they leave the surface out. */
    private static final int TRIED = 4;

    /** Greatest number of rows one way that the first search for a place looks at. */
    private static final int MOST_ROWS = 60;

    private final int[] degree;
    private final double[][] knots;

    /** By u, then by v: x w, y w, z w and w. */
    private final double[][][] net;

    private final double[] period = new double[2];
    private final double tiny;

    /** Points all over the surface, by u, then by v: where the search for a place starts. */
    private final Vector3D[] samples;

    /**
     * @param knots for u and for v, each as often as it counts: points + degree + 1 of them, never falling
     * @param tiny places this near to each other are one
     */
    Spline(int[] degree, double[][] knots, double[][][] net, double tiny) {
        this.degree = degree.clone();
        this.knots = knots.clone();
        this.net = net.clone();
        this.tiny = tiny;
        for (int axis = 0; axis < 2; axis++) {
            period[axis] = closed(axis) ? end(axis) - start(axis) : 0;
        }
        this.samples = samples();
    }

    double start(int axis) {
        return knots[axis][degree[axis]];
    }

    double end(int axis) {
        return knots[axis][knots[axis].length - 1 - degree[axis]];
    }

    private boolean closed(int axis) {
        double wide = 0;
        for (double s : Stations.even(start(1 - axis), end(1 - axis), 12)) {
            Vector3D first = on(axis, start(axis), s);
            if (first.distance(on(axis, end(axis), s)) > tiny) {
                return false;
            }
            wide = Math.max(wide, first.distance(on(axis, 0.5 * (start(axis) + end(axis)), s)));
        }
        return wide > tiny;
    }

    private Vector3D on(int axis, double along, double across) {
        return axis == 0 ? at(along, across) : at(across, along);
    }

    @Override
    public Vector3D at(double u, double v) {
        return jet(u, v)[0];
    }

    /** The point and its derivatives by u and by v. */
    private Vector3D[] jet(double u, double v) {
        double s = within(0, u);
        double t = within(1, v);
        int i = DeBoor.span(knots[0], degree[0], s);
        int k = DeBoor.span(knots[1], degree[1], t);
        double[][] across = new double[degree[0] + 1][];
        double[][] slopes = new double[degree[0] + 1][];
        for (int row = 0; row <= degree[0]; row++) {
            double[][] points = new double[degree[1] + 1][];
            System.arraycopy(net[i - degree[0] + row], k - degree[1], points, 0, points.length);
            double[][] both = DeBoor.at(points, knots[1], k, t);
            across[row] = both[0];
            slopes[row] = both[1];
        }
        double[][] both = DeBoor.at(across, knots[0], i, s);
        double[] bySecond = DeBoor.at(slopes, knots[0], i, s)[0];
        double[] c = both[0];
        Vector3D point = Vector3D.of(c[0] / c[3], c[1] / c[3], c[2] / c[3]);
        return new Vector3D[] {point, slope(both[1], point, c[3]), slope(bySecond, point, c[3])};
    }

    private static Vector3D slope(double[] d, Vector3D point, double weight) {
        return Vector3D.of(d[0], d[1], d[2]).subtract(point.multiply(d[3])).multiply(1 / weight);
    }

    private double within(int axis, double parameter) {
        double low = start(axis);
        double high = end(axis);
        double t = parameter;
        if (period[axis] > 0 && (t < low || t > high)) {
            t -= period[axis] * Math.floor((t - low) / period[axis]);
        }
        return Math.min(Math.max(t, low), high);
    }

    @Override
    public Place nearest(Vector3D place, @Nullable Place near) {
        Place close = near == null ? null : approached(place, near);
        if (close != null && off(close, place) <= 10 * tiny) {
            return close;
        }
        Place found = approached(place, sampled(place));
        return close != null && off(close, place) <= off(found, place) ? close : found;
    }

    private double off(Place on, Vector3D place) {
        return at(on.u(), on.v()).distance(place);
    }

    private Place sampled(Vector3D place) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < samples.length; i++) {
            double distance = samples[i].distance(place);
            if (distance < least) {
                least = distance;
                best = i;
            }
        }
        double[] columns = samples(1);
        return new Place(samples(0)[best / columns.length], columns[best % columns.length]);
    }

    private Vector3D[] samples() {
        double[] rows = samples(0);
        double[] columns = samples(1);
        Vector3D[] result = new Vector3D[rows.length * columns.length];
        for (int i = 0; i < result.length; i++) {
            result[i] = at(rows[i / columns.length], columns[i % columns.length]);
        }
        return result;
    }

    private double[] samples(int axis) {
        int spans = axis == 0 ? net.length : net[0].length;
        return Stations.even(start(axis), end(axis), Math.min(MOST_ROWS, 3 * (spans - 1)));
    }

    /** Damped Gauss-Newton steps (Levenberg 1944, Marquardt 1963) within the surface. */
    private Place approached(Vector3D place, Place from) {
        double u = from.u();
        double v = from.v();
        double damping = 1e-6;
        Vector3D[] jet = jet(u, v);
        Vector3D off = jet[0].subtract(place);
        for (int i = 0; i < 40; i++) {
            double a = jet[1].normSq();
            double b = jet[1].dot(jet[2]);
            double c = jet[2].normSq();
            double most = damping * Math.max(a, c) + Double.MIN_NORMAL;
            double det = (a + most) * (c + most) - b * b;
            double gu = jet[1].dot(off);
            double gv = jet[2].dot(off);
            double nextU = clamped(0, u - ((c + most) * gu - b * gv) / det);
            double nextV = clamped(1, v - ((a + most) * gv - b * gu) / det);
            Vector3D[] next = jet(nextU, nextV);
            Vector3D left = next[0].subtract(place);
            boolean still = next[0].distance(jet[0]) <= 1e-3 * tiny;
            if (left.norm() <= off.norm()) {
                u = nextU;
                v = nextV;
                jet = next;
                off = left;
                damping = Math.max(1e-12, 0.1 * damping);
            } else {
                damping *= 10;
            }
            if (still) {
                break;
            }
        }
        return new Place(u, v);
    }

    private double clamped(int axis, double parameter) {
        return period[axis] > 0 ? parameter : within(axis, parameter);
    }

    @Override
    public double period(int axis) {
        return period[axis];
    }

    /** Each knot span by itself, because a surface may bend at its knots. */
    @Override
    public double[] stations(int axis, Window window, Fineness fineness) {
        double low = window.low(axis);
        double high = window.high(axis);
        List<Double> result = new ArrayList<>();
        result.add(low);
        double last = low;
        for (double knot : bends(axis, low, high)) {
            int steps = steps(axis, last, knot, window, fineness);
            for (int i = 1; i <= steps; i++) {
                result.add(i == steps ? knot : last + (knot - last) * i / steps);
            }
            last = knot;
        }
        return result.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** The knots between two parameters, rising, and the second parameter. */
    private List<Double> bends(int axis, double low, double high) {
        List<Double> result = new ArrayList<>();
        double size = end(axis) - start(axis);
        double lap = period[axis] > 0 ? period[axis] * Math.floor((low - start(axis)) / period[axis]) : 0;
        double last = low;
        do {
            for (int i = degree[axis]; i < knots[axis].length - degree[axis]; i++) {
                double knot = lap + knots[axis][i];
                if (knot > last + 1e-9 * size && knot < high - 1e-9 * size) {
                    result.add(knot);
                    last = knot;
                }
            }
            lap += period[axis];
        } while (period[axis] > 0 && lap + start(axis) < high);
        result.add(high);
        return result;
    }

    private int steps(int axis, double from, double to, Window window, Fineness fineness) {
        double worst = 0;
        for (double across : Stations.even(window.low(1 - axis), window.high(1 - axis), 8)) {
            double[] t = Stations.even(from, to, 2 * TRIED);
            for (int i = 2; i < t.length; i += 2) {
                Vector3D a = on(axis, t[i - 2], across);
                Vector3D b = on(axis, t[i], across);
                worst = Math.max(worst, Bend.of(a, b, on(axis, t[i - 1], across)));
            }
        }
        double needed = Math.ceil(TRIED * Math.sqrt(worst / (0.5 * fineness.chord())) - 1e-9);
        if (!(needed <= FaceNet.MOST_ROWS)) {
            throw new ShapeException("a surface needs more than " + FaceNet.MOST_ROWS + " rows of facets");
        }
        return Math.max(1, (int) needed);
    }

    @Override
    public Window bounds() {
        double max = Double.POSITIVE_INFINITY;
        return new Window(
                period[0] > 0 ? -max : start(0),
                period[0] > 0 ? max : end(0),
                period[1] > 0 ? -max : start(1),
                period[1] > 0 ? max : end(1));
    }

    @Override
    public OptionalDouble pole(boolean upper) {
        double v = upper ? end(1) : start(1);
        Vector3D first = at(start(0), v);
        for (double u : Stations.even(start(0), end(0), 12)) {
            if (at(u, v).distance(first) > tiny) {
                return OptionalDouble.empty();
            }
        }
        return OptionalDouble.of(v);
    }
}
