package runtrue.shape.surface;

import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import runtrue.shape.curve.Curve;
import runtrue.shape.curve.Fineness;
import runtrue.shape.curve.Line;

/**
 * A surface of revolution, cylinders, spheres and tori among them: u is the angle about the axis in radians, v the
 * parameter of the profile.
 */
final class Turned implements Surface {
    private static final double TURN = 2 * Math.PI;

    private final AffineTransformMatrix3D axes;
    private final AffineTransformMatrix3D back;
    private final Curve profile;
    private final double low;
    private final double high;
    private final double tiny;

    /**
     * @param axes from those in which the axis is z and the profile lies at y = 0 and x above 0; keeps lengths
     * @param low least v, infinite when there is none
     * @param tiny a radius up to this is none
     */
    Turned(AffineTransformMatrix3D axes, Curve profile, double low, double high, double tiny) {
        this.axes = axes;
        this.back = axes.inverse();
        this.profile = profile;
        this.low = low;
        this.high = high;
        this.tiny = tiny;
    }

    @Override
    public Vector3D at(double u, double v) {
        Vector3D p = profile.at(v);
        return axes.apply(Vector3D.of(p.getX() * Math.cos(u), p.getX() * Math.sin(u), p.getZ()));
    }

    @Override
    public Place nearest(Vector3D place, @Nullable Place near) {
        Vector3D p = back.apply(place);
        double radius = Math.hypot(p.getX(), p.getY());
        return new Place(Math.atan2(p.getY(), p.getX()), profile.nearest(Vector3D.of(radius, 0, p.getZ())));
    }

    @Override
    public double period(int axis) {
        return axis == 0 ? TURN : Double.isInfinite(low) ? profile.period() : 0;
    }

    @Override
    public double[] stations(int axis, Window window, Fineness fineness) {
        boolean straight = profile instanceof Line;
        Fineness share = straight ? fineness : fineness.halved();
        double[] along = profile.stations(window.v0(), window.v1(), share);
        if (axis == 1) {
            return along;
        }
        double radius = 0;
        for (double v : along) {
            radius = Math.max(radius, profile.at(v).getX());
        }
        return Stations.even(window.u0(), window.u1(), share.chords(radius, window.u1() - window.u0()));
    }

    @Override
    public Window bounds() {
        return new Window(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, low, high);
    }

    @Override
    public OptionalDouble pole(boolean upper) {
        double v = upper ? high : low;
        boolean there = !Double.isInfinite(v) && profile.at(v).getX() <= tiny;
        return there ? OptionalDouble.of(v) : OptionalDouble.empty();
    }
}
