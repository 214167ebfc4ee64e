package runtrue.roof.edge;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.DistanceOp;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;

/** Tells edges that end against a higher part of the building by the roof above that part. */
final class HigherPlanes {
    /** An edge this near (in plan) to a higher roof's outline runs along the wall below it. */
    private static final double WALL = RoofTolerance.WALL.si();

    /** Less than this is a step in the roof, not a wall. */
    private static final double LEAST_RISE = RoofTolerance.LEAST_WALL.si();

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private record Upper(RoofPlane plane, Polygon plan) {}

    private final List<Upper> planes;

    HigherPlanes(List<RoofPlane> planes) {
        this.planes = planes.stream().map(p -> new Upper(p, PlanViews.plan(p))).toList();
    }

    /** Whether a higher plane rises along the whole of a side: looked at in three places. */
    boolean riseAlong(Side side) {
        return planes.stream()
                .filter(u -> !u.plane().id().equals(side.plane().id()))
                .anyMatch(u -> rises(u, side, 0.2) && rises(u, side, 0.5) && rises(u, side, 0.8));
    }

    private static boolean rises(Upper upper, Side side, double share) {
        Vector3D at = side.from().add(side.way().multiply(share * side.length()));
        Point point = FACTORY.createPoint(new Coordinate(at.getX(), at.getY()));
        if (upper.plan().getEnvelopeInternal().distance(point.getEnvelopeInternal()) > WALL) {
            return false;
        }
        DistanceOp nearest = new DistanceOp(upper.plan(), point);
        return nearest.distance() <= WALL
                && PlanViews.height(upper.plane(), nearest.nearestPoints()[0]) > at.getZ() + LEAST_RISE;
    }
}
