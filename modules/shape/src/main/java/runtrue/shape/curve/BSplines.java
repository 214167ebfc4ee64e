package runtrue.shape.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;

/** IfcBSplineCurveWithKnots and its rational kind, and the Bezier curves of IFC2X3. */
final class BSplines {
    /** More knots than this are refused before they are laid out. */
    private static final int MOST_KNOTS = 1_000_000;

    private BSplines() {}

    static Chain chain(IfcEntity curve) {
        List<Piece> pieces = new ArrayList<>();
        for (BSpline part : read(curve).smoothParts()) {
            pieces.add(new Piece(part, part.start(), part.end(), part.end() - part.start()));
        }
        return new Chain(pieces);
    }

    static BSpline read(IfcEntity curve) {
        try {
            int degree = (int) curve.real("Degree");
            List<Vector3D> points = new ArrayList<>();
            for (IfcEntity point : curve.refs("ControlPointsList")) {
                points.add(Places.of(point));
            }
            return new BSpline(degree, knots(curve, degree, points.size()), points, weights(curve, points.size()));
        } catch (ShapeException e) {
            throw new ShapeException("The curve " + curve.label() + " is not read: " + e.getMessage()
                    + "; export it again, or with lines and arcs.");
        }
    }

    private static double[] weights(IfcEntity curve, int points) {
        if (curve.has("WeightsData")) {
            return curve.reals("WeightsData");
        }
        double[] ones = new double[points];
        Arrays.fill(ones, 1);
        return ones;
    }

    private static double[] knots(IfcEntity curve, int degree, int points) {
        if (!curve.has("Knots")) {
            return bezier(degree, points);
        }
        double[] values = curve.reals("Knots");
        double[] counts = curve.reals("KnotMultiplicities");
        if (values.length != counts.length) {
            throw new ShapeException("it has " + values.length + " knots and " + counts.length + " multiplicities");
        }
        double sum = Arrays.stream(counts).sum();
        if (!(sum <= MOST_KNOTS)) {
            throw new ShapeException("it has more than " + MOST_KNOTS + " knots");
        }
        double[] knots = new double[(int) sum];
        int n = 0;
        for (int i = 0; i < values.length; i++) {
            for (int k = 0; k < counts[i] && n < knots.length; k++) {
                knots[n++] = values[i];
            }
        }
        return knots;
    }

    /** Bezier pieces end to start, one parameter unit each: every inner knot counts as often as the degree. */
    private static double[] bezier(int degree, int points) {
        if (degree < 1 || degree > BSpline.HIGHEST_DEGREE || (points - 1) % degree != 0) {
            throw new ShapeException("it has " + points + " control points for Bezier pieces of degree " + degree);
        }
        double[] knots = new double[points + degree + 1];
        for (int i = 0; i < knots.length; i++) {
            knots[i] = Math.min(i == 0 ? 0 : (i - 1) / degree, (points - 1) / degree);
        }
        return knots;
    }
}
