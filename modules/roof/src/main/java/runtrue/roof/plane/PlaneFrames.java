package runtrue.roof.plane;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Envelope;
import runtrue.roof.PlaneFrame;

/** Makes the axes of planes. */
final class PlaneFrames {
    private PlaneFrames() {}

    /**
     * A frame at a point of the plane.
     *
     * @param normal unit length, upward
     * @param levelBelow pitch in radians under which a plane has no fall
     * @param outline gives the direction of a level plane: across runs along its longest edge
     */
    static PlaneFrame of(Vector3D normal, Vector3D point, double levelBelow, List<Vector3D> outline) {
        double pitch = Math.acos(Math.min(1, normal.getZ()));
        Vector3D up = pitch < levelBelow
                ? normal.cross(longestEdge(outline, normal))
                : Vector3D.Unit.PLUS_Z.subtract(normal.multiply(normal.getZ()));
        up = up.normalize();
        return new PlaneFrame(point, up.cross(normal).normalize(), up, normal);
    }

    /** The same axes, moved so that an outline with this extent starts at u = 0, v = 0. */
    static PlaneFrame startingAt(PlaneFrame frame, Envelope extent) {
        return new PlaneFrame(frame.at(extent.getMinX(), extent.getMinY()), frame.across(), frame.up(), frame.normal());
    }

    private static Vector3D longestEdge(List<Vector3D> ring, Vector3D normal) {
        Vector3D longest = normal.orthogonal();
        double length = 0;
        for (int i = 0; i < ring.size(); i++) {
            Vector3D edge = ring.get((i + 1) % ring.size()).subtract(ring.get(i));
            // A little more is asked of later edges, so that equal ones give the first whatever the rounding.
            if (edge.norm() > length * 1.000001) {
                length = edge.norm();
                longest = edge;
            }
        }
        return longest;
    }
}
