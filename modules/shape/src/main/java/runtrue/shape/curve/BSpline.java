package runtrue.shape.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.ShapeException;

/**
 * A B-spline curve, rational or not, evaluated by de Boor's algorithm on homogeneous coordinates. The parameter runs
 * from knot number degree to the last but degree.
 */
public final class BSpline implements Curve {
    /** Degrees above this are no curve that an authoring program draws; evaluation takes its square. */
    static final int HIGHEST_DEGREE = 25;

    private static final int DEEPEST = 24;

    private final int degree;
    private final double[] knots;

    /** x w, y w, z w and w of each control point. */
    private final double[][] points;

    /**
     * @param knots each as often as it counts: control points + degree + 1 of them, never falling
     * @param weights one for each control point, above 0; all 1 for a curve that is not rational
     */
    public BSpline(int degree, double[] knots, List<Vector3D> controlPoints, double[] weights) {
        check(degree, knots, controlPoints, weights);
        this.degree = degree;
        this.knots = knots.clone();
        this.points = new double[weights.length][];
        for (int i = 0; i < weights.length; i++) {
            Vector3D p = controlPoints.get(i);
            double w = weights[i];
            points[i] = new double[] {w * p.getX(), w * p.getY(), w * p.getZ(), w};
        }
    }

    private BSpline(int degree, double[] knots, double[][] points) {
        this.degree = degree;
        this.knots = knots;
        this.points = points;
    }

    private static void check(int degree, double[] knots, List<Vector3D> controlPoints, double[] weights) {
        if (degree < 1 || degree > HIGHEST_DEGREE) {
            throw new ShapeException("its degree " + degree + " is not between 1 and " + HIGHEST_DEGREE);
        }
        if (controlPoints.size() <= degree) {
            throw new ShapeException("it has " + controlPoints.size() + " control points for degree " + degree);
        }
        if (knots.length != controlPoints.size() + degree + 1) {
            throw new ShapeException("it has " + knots.length + " knots for " + controlPoints.size()
                    + " control points of degree " + degree);
        }
        for (int i = 1; i < knots.length; i++) {
            if (!(knots[i] >= knots[i - 1])) {
                throw new ShapeException("its knots fall");
            }
        }
        if (!(knots[controlPoints.size()] > knots[degree])) {
            throw new ShapeException("its knots span nothing");
        }
        if (weights.length != controlPoints.size()) {
            throw new ShapeException("it has " + weights.length + " weights for " + controlPoints.size() + " points");
        }
        for (double weight : weights) {
            if (!(weight > 0) || Double.isInfinite(weight)) {
                throw new ShapeException("a weight is not above 0");
            }
        }
    }

    /** First parameter. */
    public double start() {
        return knots[degree];
    }

    /** Last parameter. */
    public double end() {
        return knots[points.length];
    }

    /** The curve as smooth ones: it is taken apart where a knot counts as often as the degree, which may be a corner. */
    public List<BSpline> smoothParts() {
        List<BSpline> parts = new ArrayList<>();
        int firstPoint = 0;
        double[] left = knots;
        int shift = 0;
        for (int i = degree + 1; i < points.length; ) {
            int n = 1;
            while (knots[i + n] == knots[i]) {
                n++;
            }
            if (n >= degree && knots[i] > start() && knots[i] < end()) {
                double[] before = Arrays.copyOfRange(left, 0, i - shift + degree + 1);
                before[before.length - 1] = knots[i];
                parts.add(new BSpline(degree, before, Arrays.copyOfRange(points, firstPoint, i)));
                firstPoint = i + n - degree - 1;
                left = Arrays.copyOfRange(knots, firstPoint, knots.length);
                left[0] = knots[i];
                shift = firstPoint;
            }
            i += n;
        }
        parts.add(
                parts.isEmpty()
                        ? this
                        : new BSpline(degree, left, Arrays.copyOfRange(points, firstPoint, points.length)));
        return parts;
    }

    @Override
    public Vector3D at(double parameter) {
        double[] c = deBoor(parameter)[0];
        return Vector3D.of(c[0] / c[3], c[1] / c[3], c[2] / c[3]);
    }

    @Override
    public Vector3D tangent(double parameter) {
        double[][] both = deBoor(parameter);
        double[] c = both[0];
        double[] d = both[1];
        double w = c[3];
        return Vector3D.of((d[0] - d[3] * c[0] / w) / w, (d[1] - d[3] * c[1] / w) / w, (d[2] - d[3] * c[2] / w) / w);
    }

    /** The homogeneous point and its derivative. */
    private double[][] deBoor(double parameter) {
        double u = Math.min(Math.max(parameter, start()), end());
        int span = DeBoor.span(knots, degree, u);
        return DeBoor.at(Arrays.copyOfRange(points, span - degree, span + 1), knots, span, u);
    }

    @Override
    public double period() {
        double size = at(start()).distance(at(0.5 * (start() + end())));
        return at(start()).distance(at(end())) <= 1e-9 * size ? end() - start() : 0;
    }

    /** Every sample nearer than both its neighbours may lead to the nearest point. */
    @Override
    public double nearest(Vector3D place) {
        double[] t = coarse(start(), end(), 10 * degree);
        double[] distances = new double[t.length];
        for (int i = 0; i < t.length; i++) {
            distances[i] = at(t[i]).distance(place);
        }
        double best = t[0];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < t.length; i++) {
            int before = Math.max(0, i - 1);
            int after = Math.min(t.length - 1, i + 1);
            if (distances[i] <= distances[before] && distances[i] <= distances[after]) {
                double inner = nearest(place, t[before], t[after]);
                double distance = at(inner).distance(place);
                best = distance < least ? inner : best;
                best = distances[i] < Math.min(least, distance) ? t[i] : best;
                least = Math.min(least, Math.min(distance, distances[i]));
            }
        }
        return best;
    }

    /** Ternary search between two parameters with one least distance between them. */
    private double nearest(Vector3D place, double from, double to) {
        double low = from;
        double high = to;
        for (int i = 0; i < 100 && high - low > 1e-13 * (end() - start()); i++) {
            double a = low + (high - low) / 3;
            double b = high - (high - low) / 3;
            if (at(a).distance(place) < at(b).distance(place)) {
                high = b;
            } else {
                low = a;
            }
        }
        return 0.5 * (low + high);
    }

    /** Parameters an equal share of their knot span apart. */
    private double[] coarse(double from, double to, int steps) {
        double low = Math.min(from, to);
        double high = Math.max(from, to);
        List<Double> t = new ArrayList<>();
        t.add(low);
        for (int i = degree; i < points.length; i++) {
            for (int k = 0; k < steps && knots[i + 1] > knots[i]; k++) {
                double u = knots[i] + (knots[i + 1] - knots[i]) * k / steps;
                if (u > low && u < high) {
                    t.add(u);
                }
            }
        }
        t.add(high);
        return t.stream().mapToDouble(Double::doubleValue).toArray();
    }

    @Override
    public double[] stations(double from, double to, Fineness fineness) {
        double[] coarse = coarse(from, to, degree == 1 ? 1 : 2 * degree);
        List<Double> fine = new ArrayList<>();
        fine.add(coarse[0]);
        for (int i = 1; i < coarse.length; i++) {
            refine(coarse[i - 1], coarse[i], fineness, 0, fine);
        }
        int n = fine.size();
        double[] result = new double[n];
        for (int i = 0; i < n; i++) {
            result[i] = fine.get(from <= to ? i : n - 1 - i);
        }
        return result;
    }

    private void refine(double a, double b, Fineness fineness, int depth, List<Double> fine) {
        if (depth < DEEPEST && b > a && !flat(a, b, fineness)) {
            double middle = 0.5 * (a + b);
            refine(a, middle, fineness, depth + 1, fine);
            refine(middle, b, fineness, depth + 1, fine);
            return;
        }
        fine.add(b);
        Fineness.counted(fine.size());
    }

    /** The chord stands for the curve when all of that keeps to it, and for what swings along with the tangent. */
    private boolean flat(double a, double b, Fineness fineness) {
        double length = at(a).distance(at(b));
        int span = DeBoor.span(knots, degree, 0.5 * (a + b));
        double[][] hung = Arrays.copyOfRange(points, span - degree, span + 1);
        if (!Chord.of(at(a), at(b), fineness.chord()).keeps(DeBoor.bezier(hung, knots, span, a, b))) {
            return false;
        }
        Vector3D first = tangent(a);
        Vector3D last = tangent(b);
        if (first.norm() == 0 || last.norm() == 0) {
            return fineness.reach() == 0 || length <= fineness.chord();
        }
        double turn = first.angle(last);
        return turn <= fineness.step() && (length + fineness.reach() * turn) * turn / 8 <= fineness.chord();
    }
}
