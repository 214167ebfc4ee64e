package runtrue.shape.sweep;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * Where a cross section stands on its way: in the plane that halves the angle between arrival and departure, so that
 * straight lengths meet in a mitre. Between the mitres the section square to the way is the profile.
 *
 * @param normal of the plane, unit length
 * @param before axes of the profile on arrival
 * @param after axes of the profile on departure; where the two do not meet in the plane, the section lies between them
 */
record Seat(Vector3D origin, Vector3D normal, Side before, Side after) {
    /** Sharper than this cosine of half the turn, a mitre is ten times as long as the profile is wide. */
    static final double LEAST_COSINE = 0.1;

    /**
     * Axes of the profile on a straight length.
     *
     * @param along unit direction of the way
     * @param x unit length, square to it; y completes the right hand
     */
    record Side(Vector3D along, Vector3D x) {
        Vector3D at(double px, double py) {
            return x.multiply(px).add(along.cross(x).multiply(py));
        }
    }

    /** The profile's point in space. */
    Vector3D at(double px, double py) {
        Vector3D arriving = mitred(before, px, py);
        return before.equals(after)
                ? origin.add(arriving)
                : origin.add(arriving.add(mitred(after, px, py)).multiply(0.5));
    }

    private Vector3D mitred(Side side, double px, double py) {
        Vector3D off = side.at(px, py);
        return off.subtract(side.along().multiply(off.dot(normal) / side.along().dot(normal)));
    }
}
