package runtrue.shape.curve.alignment;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.curve.BSpline;

/**
 * A curve whose coordinates are polynomials of one parameter, IfcPolynomialCurve; a parabola between two gradients is one.
 *
 * @param points what stands before the powers 0, 1 and so on
 */
record Polynomial(List<Vector3D> points) {
    /** Steps of Simpson's rule for a length: what is drawn turns by far less than a right angle. */
    private static final int STEPS = 200;

    Polynomial {
        points = List.copyOf(points);
    }

    static Polynomial of(IfcEntity curve) {
        double[] x = factors(curve, "CoefficientsX");
        double[] y = factors(curve, "CoefficientsY");
        double[] z = factors(curve, "CoefficientsZ");
        int count = Math.max(2, Math.max(x.length, Math.max(y.length, z.length)));
        return new Polynomial(IntStream.range(0, count)
                .mapToObj(i -> Vector3D.of(factor(x, i), factor(y, i), factor(z, i)))
                .toList());
    }

    private static double[] factors(IfcEntity curve, String attribute) {
        return curve.has(attribute) ? curve.reals(attribute) : new double[0];
    }

    private static double factor(double[] factors, int power) {
        return power < factors.length ? factors[power] : 0;
    }

    private double speed(double u) {
        Vector3D sum = Vector3D.ZERO;
        for (int i = points.size() - 1; i >= 1; i--) {
            sum = sum.multiply(u).add(points.get(i).multiply(i));
        }
        return sum.norm();
    }

    /** Length from parameter 0, negative before it, by Simpson's rule. */
    double length(double u) {
        double sum = speed(0) + speed(u);
        for (int i = 1; i < STEPS; i++) {
            sum += (i % 2 == 1 ? 4 : 2) * speed(u * i / STEPS);
        }
        return sum * u / (3 * STEPS);
    }

    /** The parameter at a length from parameter 0, by Newton's method. */
    double atLength(double length) {
        double u = speed(0) > 0 ? length / speed(0) : length;
        for (int i = 0; i < 50; i++) {
            double speed = speed(u);
            double step = speed > 0 ? (length(u) - length) / speed : 0;
            u -= step;
            if (Math.abs(step) <= 1e-14 * Math.abs(u)) {
                break;
            }
        }
        return u;
    }

    /** The part between two parameters as one with the parameter 0 to 1: the same polynomial in Bernstein's form. */
    BSpline between(double from, double to) {
        int degree = points.size() - 1;
        Vector3D[] own = shifted(from);
        Vector3D[] control = new Vector3D[degree + 1];
        Arrays.fill(control, Vector3D.ZERO);
        for (int i = 0; i <= degree; i++) {
            for (int k = 0; k <= i; k++) {
                control[i] = control[i].add(own[k].multiply(Math.pow(to - from, k) * over(i, k) / over(degree, k)));
            }
        }
        double[] knots = new double[2 * degree + 2];
        Arrays.fill(knots, degree + 1, knots.length, 1);
        double[] weights = new double[degree + 1];
        Arrays.fill(weights, 1);
        return new BSpline(degree, knots, List.of(control), weights);
    }

    /** Factors of the powers of u - from, by Horner's scheme again and again. */
    private Vector3D[] shifted(double from) {
        Vector3D[] own = points.toArray(Vector3D[]::new);
        for (int k = 0; k < own.length; k++) {
            for (int i = own.length - 2; i >= k; i--) {
                own[i] = own[i].add(own[i + 1].multiply(from));
            }
        }
        return own;
    }

    private static double over(int n, int k) {
        double result = 1;
        for (int i = 1; i <= k; i++) {
            result = result * (n - k + i) / i;
        }
        return result;
    }
}
