package runtrue.shape.surface;

import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import runtrue.shape.curve.Fineness;

/** A surface over two parameters, u (axis 0) and v (axis 1), in file units and the axes of its item. Immutable. */
public interface Surface {
    Vector3D at(double u, double v);

    /**
     * The parameters of the point nearest to a place.
     *
     * @param near where to look first: the place before it on the same loop; null for the first one
     */
    Place nearest(Vector3D place, @Nullable Place near);

    /** After so much of a parameter the surface starts again; 0 when it does not. */
    double period(int axis);

    /** Parameters between which chords keep half the tolerance, or all of it where the other direction is straight. */
    double[] stations(int axis, Window window, Fineness fineness);

    /** Where the surface ends by itself; infinite where it does not. */
    Window bounds();

    /** The v at which all u are one point, at the lower or upper end. */
    OptionalDouble pole(boolean upper);
}
