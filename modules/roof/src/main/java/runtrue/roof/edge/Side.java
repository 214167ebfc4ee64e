package runtrue.roof.edge;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import runtrue.roof.RoofPlane;

/**
 * One straight side of a plane's outline, metres, moved by the drop origin.
 *
 * @param out unit length, in the plane, square to the side, away from the plane's area
 */
record Side(RoofPlane plane, Vector3D from, Vector3D to, Vector3D out) {
    /** Sides of the outline, penetrations left out, in the order of the ring. */
    static List<Side> of(RoofPlane plane) {
        Coordinate[] ring = plane.outline().getExteriorRing().getCoordinates();
        int turn = Orientation.isCCW(ring) ? 1 : -1;
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i + 1 < ring.length; i++) {
            Vector3D a = plane.frame().at(ring[i].x, ring[i].y);
            Vector3D b = plane.frame().at(ring[i + 1].x, ring[i + 1].y);
            Vector3D way = b.subtract(a);
            if (way.norm() > 0) {
                sides.add(new Side(
                        plane,
                        a,
                        b,
                        way.cross(plane.frame().normal()).multiply(turn).normalize()));
            }
        }
        return sides;
    }

    Vector3D way() {
        return to.subtract(from).normalize();
    }

    double length() {
        return from.distance(to);
    }

    Vector3D middle() {
        return from.add(to).multiply(0.5);
    }

    /** The part between two distances from the start. */
    Side part(double start, double end) {
        return new Side(plane, from.add(way().multiply(start)), from.add(way().multiply(end)), out);
    }

    /**
     * How water runs at the side: more than 0 towards it, less than 0 away from it; the cosine between the fall and the
     * outward direction. 0 on level planes.
     */
    double flow() {
        return plane.azimuth().isEmpty() ? 0 : -plane.frame().up().dot(out);
    }

    /** Rise for each metre along the side. */
    double slope() {
        return Math.abs(way().getZ());
    }
}
