package runtrue.wind.form;

import org.locationtech.jts.geom.Geometry;
import runtrue.wind.WindException;

/**
 * One plane of a roof as seen from above.
 *
 * @param plan polygon or multipolygon in plan, metres, openings left out
 * @param fallX x of the direction of fall in plan, of unit length with fallY; both 0 for a level plane
 * @param pitch to the horizontal, radians, 0 up to below a right angle
 */
public record WindSlope(String id, Geometry plan, double fallX, double fallY, double pitch) {
    public WindSlope {
        if (!(pitch >= 0 && pitch < Math.PI / 2)) {
            throw new WindException(
                    "Plane " + id + ": the pitch is " + pitch + " rad; it has to be from 0 to below a right angle.");
        }
        double length = Math.hypot(fallX, fallY);
        if ((length != 0 || pitch > 1e-3) && Math.abs(length - 1) > 1e-6) {
            throw new WindException("Plane " + id + ": the direction of fall is no unit vector.");
        }
    }

    /** True area over plan area. */
    public double slopeFactor() {
        return 1 / Math.cos(pitch);
    }

    public double pitchDegrees() {
        return Math.toDegrees(pitch);
    }
}
