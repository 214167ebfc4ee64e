package runtrue.roof.edge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import runtrue.roof.PlaneFrame;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;

/**
 * One straight side of a plane's outline, metres, moved by the drop origin.
 *
 * @param frame axes of the plane there, {@code up} up the fall
 * @param out unit length, in the plane, square to the side, away from the plane's area
 */
record Side(RoofPlane plane, PlaneFrame frame, Vector3D from, Vector3D to, Vector3D out) {
    private static final double INSIDE = RoofTolerance.CROWN_AT_END.si();
    private static final double LEAST_RISE = Math.sin(RoofTolerance.FLAT_PLANE.si());

    /**
     * Sides of the outline, penetrations left out, in their order around it: counter-clockwise seen from above, so that
     * those of planes beside each other run opposite ways.
     */
    static List<Side> of(RoofPlane plane) {
        Coordinate[] ring = plane.outline().getExteriorRing().getCoordinates();
        List<Vector3D> corners = new ArrayList<>(plane.lift(plane.outline().getExteriorRing()));
        if (!Orientation.isCCW(ring)) {
            Collections.reverse(corners);
        }
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < corners.size(); i++) {
            Vector3D a = corners.get(i);
            Vector3D b = corners.get((i + 1) % corners.size());
            Vector3D way = b.subtract(a);
            if (way.norm() > 0) {
                Vector3D middle = a.add(b).multiply(0.5);
                PlaneFrame frame = plane.frameNear(middle);
                Vector3D out = way.cross(frame.normal()).normalize();
                if (Math.abs(frame.up().getZ()) < LEAST_RISE) {
                    // At a crown the surface is level; which way water leaves shows a little further in.
                    frame = plane.frameNear(middle.subtract(out.multiply(INSIDE)));
                }
                sides.add(new Side(plane, upTheFall(frame), a, b, out));
            }
        }
        return sides;
    }

    /** Sides of flat planes all together, those of curved ones each apart: they have no one line of intersection with others. */
    static List<List<Side>> flatParts(List<Side> sides) {
        boolean curved = !sides.isEmpty() && sides.get(0).plane().curve().isPresent();
        return curved ? sides.stream().map(List::of).toList() : List.of(sides);
    }

    /** On the far side of a barrel's crown v runs down the fall. */
    private static PlaneFrame upTheFall(PlaneFrame f) {
        return f.up().getZ() < 0 ? new PlaneFrame(f.origin(), f.across().negate(), f.up().negate(), f.normal()) : f;
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
        return new Side(plane, frame, from.add(way().multiply(start)), from.add(way().multiply(end)), out);
    }

    /**
     * How water runs at the side: more than 0 towards it, less than 0 away from it; the cosine between the fall and the
     * outward direction. 0 on level planes.
     */
    double flow() {
        boolean level = plane.curve().isEmpty() && plane.azimuth().isEmpty();
        return level ? 0 : -frame.up().dot(out);
    }

    /** Rise for each metre along the side. */
    double slope() {
        return Math.abs(way().getZ());
    }
}
