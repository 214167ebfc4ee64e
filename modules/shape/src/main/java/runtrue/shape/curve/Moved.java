package runtrue.shape.curve;

import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** A curve in other axes; chords keep their tolerance where the transform keeps lengths. */
record Moved(Curve curve, AffineTransformMatrix3D transform) implements Curve {
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

    @Override
    public double[] stations(double from, double to, Fineness fineness) {
        return curve.stations(from, to, fineness);
    }
}
