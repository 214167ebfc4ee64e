package runtrue.roof.bearing;

import java.util.List;
import java.util.OptionalDouble;
import runtrue.roof.SupportPiece;
import runtrue.roof.bearing.TruePlane.Deviation;

/** The plane {@code w = a + b u + c v} with the least squares of distance to the ends of all pieces, by their lengths. */
final class BestFit {
    private double weights;
    private double u;
    private double v;
    private double w;
    private double uu;
    private double uv;
    private double vv;
    private double uw;
    private double vw;

    private BestFit() {}

    /** Angle between the best plane and one parallel to the roof, radians; empty when the ends lie on one line. */
    static OptionalDouble of(List<Deviation> deviations) {
        // Taken from a point among them, so that no digits are lost.
        SupportPiece first = deviations.get(0).piece();
        BestFit fit = new BestFit();
        for (Deviation d : deviations) {
            SupportPiece p = d.piece();
            double weight = p.uTo() - p.uFrom();
            fit.add(weight, p.uFrom() - first.uFrom(), p.vFrom() - first.vFrom(), d.atFrom());
            fit.add(weight, p.uTo() - first.uFrom(), p.vTo() - first.vFrom(), d.atTo());
        }
        return fit.tilt();
    }

    private void add(double weight, double atU, double atV, double atW) {
        weights += weight;
        u += weight * atU;
        v += weight * atV;
        w += weight * atW;
        uu += weight * atU * atU;
        uv += weight * atU * atV;
        vv += weight * atV * atV;
        uw += weight * atU * atW;
        vw += weight * atV * atW;
    }

    private OptionalDouble tilt() {
        double a = uu - u * u / weights;
        double b = uv - u * v / weights;
        double c = vv - v * v / weights;
        double p = uw - u * w / weights;
        double q = vw - v * w / weights;
        double determinant = a * c - b * b;
        if (!(determinant > 1e-9 * a * c)) {
            return OptionalDouble.empty();
        }
        double alongU = (c * p - b * q) / determinant;
        double alongV = (a * q - b * p) / determinant;
        return OptionalDouble.of(Math.atan(Math.hypot(alongU, alongV)));
    }
}
