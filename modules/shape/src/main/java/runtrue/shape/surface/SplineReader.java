package runtrue.shape.surface;

import java.util.Arrays;
import java.util.List;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.step.StepValue;

/** B-spline surfaces of files, rational ones among them. */
final class SplineReader {
    private static final int HIGHEST_DEGREE = 25;

    /** More control points than this are no building's surface; each is kept in memory and looked at by every search. */
    private static final int MOST_POINTS = 200_000;

    private final IfcEntity surface;
    private final double tiny;

    SplineReader(IfcEntity surface, double tiny) {
        this.surface = surface;
        this.tiny = tiny;
    }

    Surface read() {
        List<IfcEntity> points = surface.refs("ControlPointsList");
        int rows = surface.value("ControlPointsList") instanceof StepValue.ListOf list
                ? list.items().size()
                : 0;
        if (rows < 2 || points.size() % rows != 0 || points.size() < 2 * rows || points.size() > MOST_POINTS) {
            throw unfit("its " + points.size() + " control points are no rows of equal length");
        }
        int columns = points.size() / rows;
        int[] degree = {degree("UDegree"), degree("VDegree")};
        double[][] knots = {knots("U", degree[0], rows), knots("V", degree[1], columns)};
        return new Spline(degree, knots, net(points, rows, columns), tiny);
    }

    private ShapeException unfit(String what) {
        return new ShapeException("The surface " + surface.label() + " is no B-spline: " + what
                + "; export this element again, or as a faceted body.");
    }

    private int degree(String attribute) {
        double degree = surface.real(attribute);
        if (!(degree >= 1 && degree <= HIGHEST_DEGREE)) {
            throw unfit("its degree is not between 1 and " + HIGHEST_DEGREE);
        }
        return (int) degree;
    }

    private double[][][] net(List<IfcEntity> points, int rows, int columns) {
        double[] weights = surface.has("WeightsData") ? surface.reals("WeightsData") : ones(points.size());
        if (weights.length != points.size()) {
            throw unfit("it has " + weights.length + " weights for " + points.size() + " control points");
        }
        double[][][] net = new double[rows][columns][];
        for (int i = 0; i < weights.length; i++) {
            double w = weights[i];
            double[] c = points.get(i).reals("Coordinates");
            if (!(w > 0) || Double.isInfinite(w) || c.length != 3) {
                throw unfit("a weight is not above 0, or a control point does not have three coordinates");
            }
            net[i / columns][i % columns] = new double[] {w * c[0], w * c[1], w * c[2], w};
        }
        return net;
    }

    private static double[] ones(int n) {
        double[] result = new double[n];
        Arrays.fill(result, 1);
        return result;
    }

    private double[] knots(String way, int degree, int points) {
        double[] result = new double[points + degree + 1];
        double[] values = surface.reals(way + "Knots");
        double[] counts = surface.reals(way + "Multiplicities");
        double sum = Arrays.stream(counts).sum();
        if (values.length != counts.length || sum != result.length) {
            throw unfit("it has " + sum + " knots for " + points + " control points of degree " + degree);
        }
        int n = 0;
        for (int i = 0; i < values.length; i++) {
            for (int k = 0; k < counts[i] && n < result.length; k++) {
                result[n++] = values[i];
            }
        }
        for (int i = 1; i < result.length; i++) {
            if (!(result[i] >= result[i - 1])) {
                throw unfit("its knots fall");
            }
        }
        if (!(result[points] > result[degree])) {
            throw unfit("its knots span nothing");
        }
        return result;
    }
}
