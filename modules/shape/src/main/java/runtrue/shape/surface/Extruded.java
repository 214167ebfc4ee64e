package runtrue.shape.surface;

import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import runtrue.shape.curve.Fineness;

/** A surface of linear extrusion: u is the parameter of the profile, v the length along the direction. */
final class Extruded implements Surface {
    private final AffineTransformMatrix3D axes;
    private final AffineTransformMatrix3D back;
    private final Along profile;
    private final Vector3D direction;

    /**
     * @param axes from those in which the profile lies at z = 0; keeps lengths
     * @param direction of unit length, not within the plane of the profile
     */
    Extruded(AffineTransformMatrix3D axes, Along profile, Vector3D direction) {
        this.axes = axes;
        this.back = axes.inverse();
        this.profile = profile;
        this.direction = direction;
    }

    @Override
    public Vector3D at(double u, double v) {
        return axes.apply(profile.at(u).add(direction.multiply(v)));
    }

    @Override
    public Place nearest(Vector3D place, @Nullable Place near) {
        Vector3D p = back.apply(place);
        double v = p.getZ() / direction.getZ();
        return new Place(profile.nearest(p.subtract(direction.multiply(v))), v);
    }

    @Override
    public double period(int axis) {
        return axis == 0 ? profile.period() : 0;
    }

    @Override
    public double[] stations(int axis, Window window, Fineness fineness) {
        return axis == 0
                ? profile.stations(window.u0(), window.u1(), fineness)
                : new double[] {window.v0(), window.v1()};
    }

    @Override
    public Window bounds() {
        double max = Double.POSITIVE_INFINITY;
        boolean closed = profile.period() > 0;
        return new Window(closed ? -max : 0, closed ? max : profile.span(), -max, max);
    }

    @Override
    public OptionalDouble pole(boolean upper) {
        return OptionalDouble.empty();
    }
}
