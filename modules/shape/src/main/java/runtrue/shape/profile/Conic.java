package runtrue.shape.profile;

import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;

/**
 * A circle or ellipse in its placement; the parameter is the angle from the placement's first axis, in radians.
 *
 * @param placement of the centre and axes, in file units
 */
record Conic(AffineTransformMatrix3D placement, double semiAxis1, double semiAxis2) {
    static Conic of(IfcEntity curve) {
        boolean circle = curve.type().equals("IfcCircle");
        double first = curve.real(circle ? "Radius" : "SemiAxis1");
        double second = circle ? first : curve.real("SemiAxis2");
        if (!(first > 0 && second > 0)) {
            throw new ShapeException("The radius of " + curve.label() + " is not positive.");
        }
        return new Conic(curve.model().transform(curve.ref("Position")), first, second);
    }

    double[] at(double angle) {
        double x = semiAxis1 * Math.cos(angle);
        double y = semiAxis2 * Math.sin(angle);
        return new double[] {placement.applyX(x, y, 0), placement.applyY(x, y, 0)};
    }

    /** The parameter of the point of the curve towards a place. */
    double angleTo(double x, double y) {
        AffineTransformMatrix3D back = placement.inverse();
        return Math.atan2(back.applyY(x, y, 0) / semiAxis2, back.applyX(x, y, 0) / semiAxis1);
    }

    double[] whole(double chord) {
        int n = 4 * Arcs.chords(Math.max(semiAxis1, semiAxis2), Math.PI / 2, chord);
        return arc(0, 2 * Math.PI, n);
    }

    /** Corners from one parameter over a signed sweep, both ends included. */
    double[] arc(double start, double sweep, double chord) {
        return arc(start, sweep, Arcs.chords(Math.max(semiAxis1, semiAxis2), sweep, chord));
    }

    private double[] arc(double start, double sweep, int chords) {
        double[] xy = new double[2 * chords + 2];
        for (int i = 0; i <= chords; i++) {
            double[] p = at(start + sweep * i / chords);
            xy[2 * i] = p[0];
            xy[2 * i + 1] = p[1];
        }
        return xy;
    }
}
