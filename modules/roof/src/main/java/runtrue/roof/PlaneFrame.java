package runtrue.roof;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A plane's own axes: u across the fall (to the right, looking up the fall), v up the fall, w out of the roof. Right-handed,
 * unit vectors, metres, moved by the drop origin. A level plane has no fall: u then follows its longest edge.
 */
public record PlaneFrame(Vector3D origin, Vector3D across, Vector3D up, Vector3D normal) {
    /** The point at u, v in the plane. */
    public Vector3D at(double u, double v) {
        return at(u, v, 0);
    }

    /** The point at u, v and w above the plane. */
    public Vector3D at(double u, double v, double w) {
        return origin.add(across.multiply(u)).add(up.multiply(v)).add(normal.multiply(w));
    }

    public double u(Vector3D point) {
        return point.subtract(origin).dot(across);
    }

    public double v(Vector3D point) {
        return point.subtract(origin).dot(up);
    }

    /** Distance above the plane, negative below. */
    public double w(Vector3D point) {
        return point.subtract(origin).dot(normal);
    }
}
