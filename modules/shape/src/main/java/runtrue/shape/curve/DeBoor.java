package runtrue.shape.curve;

/**
 * De Boor's way to a point of a B-spline, for curves and for each direction of a surface (L. Piegl and W. Tiller, The NURBS
 * Book, from memory). Points are homogeneous: x w, y w, z w and w.
 */
public final class DeBoor {
    private DeBoor() {}

    /**
     * The number of the knot at or before a parameter whose next one is after it; the last such one at the end.
     *
     * @param knots never falling, each as often as it counts
     */
    public static int span(double[] knots, int degree, double parameter) {
        int low = degree;
        int high = knots.length - 1 - degree;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (knots[middle] <= parameter) {
                low = middle;
            } else {
                high = middle;
            }
        }
        while (knots[low + 1] == knots[low]) {
            low--;
        }
        return low;
    }

    /**
     * The point and its derivative.
     *
     * @param d the degree + 1 points that the span hangs on; the array is overwritten, but not the points in it
     * @param span as {@link #span} gives it for the parameter
     */
    public static double[][] at(double[][] d, double[] knots, int span, double parameter) {
        int degree = d.length - 1;
        double[] derivative = new double[4];
        for (int level = 1; level <= degree; level++) {
            if (level == degree) {
                double width = knots[span + 1] - knots[span];
                for (int k = 0; k < 4; k++) {
                    derivative[k] = degree * (d[degree][k] - d[degree - 1][k]) / width;
                }
            }
            for (int i = degree; i >= level; i--) {
                double low = knots[span - degree + i];
                double alpha = (parameter - low) / (knots[span + 1 + i - level] - low);
                d[i] = between(d[i - 1], d[i], alpha);
            }
        }
        return new double[][] {d[degree], derivative};
    }

    /**
     * The Bezier points of one span between two of its parameters: the polar form of the span's polynomial, taken at the
     * first parameter for each point before it and at the second for the rest.
     *
     * @param d the degree + 1 points that the span hangs on; neither the array nor its points are overwritten
     */
    static double[][] bezier(double[][] d, double[] knots, int span, double from, double to) {
        int degree = d.length - 1;
        double[][] result = new double[degree + 1][];
        for (int seconds = 0; seconds <= degree; seconds++) {
            double[][] c = d.clone();
            for (int level = 1; level <= degree; level++) {
                double parameter = level <= seconds ? to : from;
                for (int i = degree; i >= level; i--) {
                    double low = knots[span - degree + i];
                    c[i] = between(c[i - 1], c[i], (parameter - low) / (knots[span + 1 + i - level] - low));
                }
            }
            result[seconds] = c[degree];
        }
        return result;
    }

    static double[] between(double[] a, double[] b, double share) {
        double[] mixed = new double[4];
        for (int k = 0; k < 4; k++) {
            mixed[k] = (1 - share) * a[k] + share * b[k];
        }
        return mixed;
    }
}
