package runtrue.shape.profile;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import runtrue.shape.curve.Fineness;

/**
 * An area in a plane, in file units.
 *
 * @param name the profile's name, or its class without a name
 * @param outer outline as {@link Ring}, counter-clockwise
 * @param voids holes, clockwise
 */
public record Profile(String name, Ring outer, List<Ring> voids) {
    public Profile {
        outer = outer.counterClockwise();
        List<Ring> clockwise = new ArrayList<>(voids.size());
        for (Ring ring : voids) {
            clockwise.add(ring.counterClockwise().reversed());
        }
        voids = List.copyOf(clockwise);
    }

    /** A rectangle from the origin along positive x and y. */
    public static Profile rectangle(String name, double xLength, double yLength) {
        return new Profile(name, Ring.of(new double[] {0, 0, xLength, 0, xLength, yLength, 0, yLength}, 0), List.of());
    }

    /** A circle about the origin. */
    public static Profile circle(String name, double radius, Fineness fineness) {
        return new Profile(name, Arcs.ellipse(radius, radius, fineness), List.of());
    }

    /** The profile moved within its plane; the transform's third dimension is ignored. */
    public Profile moved(AffineTransformMatrix3D transform) {
        List<Ring> moved = new ArrayList<>(voids.size());
        for (Ring ring : voids) {
            moved.add(ring.moved(transform));
        }
        return new Profile(name, outer.moved(transform), moved);
    }

    /** Net area in square file units. */
    public double area() {
        double area = outer.signedArea();
        for (Ring ring : voids) {
            area += ring.signedArea();
        }
        return area;
    }
}
