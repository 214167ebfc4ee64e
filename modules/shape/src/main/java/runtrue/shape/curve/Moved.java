package runtrue.shape.curve;

import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** A curve in other axes; chords keep their tolerance where the transform keeps lengths. */
public record Moved(Curve curve, AffineTransformMatrix3D transform) implements Curve {
    private static final double SAME = 1e-9;

    @Override
    public Vector3D at(double parameter) {
        return transform.apply(curve.at(parameter));
    }

    @Override
    public Vector3D tangent(double parameter) {
        return transform.applyVector(curve.tangent(parameter));
    }

    @Override
    public double nearest(Vector3D place) {
        return curve.nearest(transform.inverse().apply(place));
    }

    @Override
    public double period() {
        return curve.period();
    }

    /** Known where the transform keeps angles, or turns a line. */
    @Override
    public OptionalDouble speed() {
        OptionalDouble own = curve.speed();
        Vector3D x = transform.applyVector(Vector3D.Unit.PLUS_X);
        Vector3D y = transform.applyVector(Vector3D.Unit.PLUS_Y);
        Vector3D z = transform.applyVector(Vector3D.Unit.PLUS_Z);
        double scale = x.norm();
        boolean alike = Math.abs(y.norm() - scale) <= SAME * scale
                && Math.abs(z.norm() - scale) <= SAME * scale
                && Math.abs(x.dot(y)) + Math.abs(y.dot(z)) + Math.abs(z.dot(x)) <= SAME * scale * scale;
        if (curve instanceof Line line) {
            return OptionalDouble.of(transform.applyVector(line.direction()).norm());
        }
        return own.isPresent() && alike ? OptionalDouble.of(own.getAsDouble() * scale) : OptionalDouble.empty();
    }

    @Override
    public double[] stations(double from, double to, Fineness fineness) {
        return curve.stations(from, to, fineness);
    }
}
