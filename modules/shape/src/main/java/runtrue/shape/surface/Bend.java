package runtrue.shape.surface;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** How far a surface leaves a chord. */
final class Bend {
    private Bend() {}

    /** The distance of a place from the line through two others. */
    static double of(Vector3D from, Vector3D to, Vector3D place) {
        Vector3D along = to.subtract(from);
        Vector3D off = place.subtract(from);
        double length = along.norm();
        return length > 0 ? off.cross(along).norm() / length : off.norm();
    }
}
