package runtrue.roof.edge;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.DistanceOp;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;
import runtrue.roof.Surround;
import runtrue.shape.Face;

/** Tells edges that end against a higher part of the building: a wall or parapet, or the roof above a wall. */
final class HigherParts {
    /** An edge this near (in plan) to a wall, or to a higher roof's outline, runs along it. */
    private static final double WALL = RoofTolerance.WALL.si();

    /** Less than this is a step in the roof, not a wall. */
    private static final double LEAST_RISE = RoofTolerance.LEAST_WALL.si();

    /** Tops of walls are level or fall like a roof; a steeper face is a side. */
    private static final double TOP = Math.cos(RoofTolerance.STEEPEST_ROOF.si());

    /** No wall rises farther above a roof. */
    private static final double HIGHEST = 1000;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    /**
     * An upward face seen from above.
     *
     * @param plan may be empty of area, never of points
     * @param foot lowest z of what it is the top of; a roof's is not known
     */
    private record Upper(Polygon plan, Vector3D point, Vector3D normal, double foot) {
        double height(Coordinate at) {
            return point.getZ()
                    - (normal.getX() * (at.x - point.getX()) + normal.getY() * (at.y - point.getY())) / normal.getZ();
        }
    }

    private final List<RoofPlane> planes;
    private final List<Upper> roofs;
    private final Surround surround;

    HigherParts(List<RoofPlane> planes, Surround surround) {
        this.planes = List.copyOf(planes);
        roofs = planes.stream()
                .map(p -> new Upper(
                        PlanViews.plan(p), p.frame().origin(), p.frame().normal(), Double.NEGATIVE_INFINITY))
                .toList();
        this.surround = surround;
    }

    /** Whether a higher plane or a wall rises along the whole of a side: looked at in three places. */
    boolean riseAlong(Side side) {
        return roofRisesAlong(side) || wallRisesAlong(side);
    }

    /** Whether a higher plane does. */
    boolean roofRisesAlong(Side side) {
        for (int i = 0; i < roofs.size(); i++) {
            if (!planes.get(i).id().equals(side.plane().id()) && rises(roofs.get(i), side)) {
                return true;
            }
        }
        return false;
    }

    private static boolean rises(Upper upper, Side side) {
        return rises(upper, side, 0.2) && rises(upper, side, 0.5) && rises(upper, side, 0.8);
    }

    /** Whether walls do: one all along, or several one after the other. */
    boolean wallRisesAlong(Side side) {
        List<Upper> tops = walls(side);
        return rises(tops, side, 0.2) && rises(tops, side, 0.5) && rises(tops, side, 0.8);
    }

    /** How high it is that rises along a side: walls, or the higher roof where there are none. Metres. */
    OptionalDouble heightAlong(Side side) {
        return riseAlong(side, walls(side));
    }

    private List<Upper> walls(Side side) {
        Vector3D a = side.from();
        Vector3D b = side.to();
        Vector3D low = Vector3D.of(
                Math.min(a.getX(), b.getX()) - WALL,
                Math.min(a.getY(), b.getY()) - WALL,
                Math.min(a.getZ(), b.getZ()) + LEAST_RISE);
        Vector3D high = Vector3D.of(
                Math.max(a.getX(), b.getX()) + WALL,
                Math.max(a.getY(), b.getY()) + WALL,
                Math.max(a.getZ(), b.getZ()) + HIGHEST);
        List<Upper> tops = new ArrayList<>();
        surround.within(Surround.Role.WALL, low, high).forEach(wall -> addTops(wall, tops));
        return tops;
    }

    /** How high walls rise along a side, or the roof where no wall was read; the mean of three places, metres. */
    private OptionalDouble riseAlong(Side side, List<Upper> walls) {
        OptionalDouble wall = mean(walls, side);
        return wall.isPresent()
                ? wall
                : mean(
                        IntStream.range(0, roofs.size())
                                .filter(i ->
                                        !planes.get(i).id().equals(side.plane().id()))
                                .mapToObj(roofs::get)
                                .toList(),
                        side);
    }

    private static OptionalDouble mean(List<Upper> uppers, Side side) {
        return DoubleStream.of(0.2, 0.5, 0.8)
                .flatMap(share ->
                        uppers.stream()
                                .map(u -> rise(u, side, share))
                                .flatMapToDouble(OptionalDouble::stream)
                                .max()
                                .stream())
                .average();
    }

    private static void addTops(ReadElement wall, List<Upper> to) {
        double foot = wall.body().faces().stream()
                .flatMap(f -> f.outline().stream())
                .mapToDouble(Vector3D::getZ)
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        for (Face face : wall.body().faces()) {
            if (face.normal().getZ() > TOP) {
                int n = face.outline().size();
                Coordinate[] ring = new Coordinate[n + 1];
                for (int i = 0; i <= n; i++) {
                    Vector3D p = face.outline().get(i % n);
                    ring[i] = new Coordinate(p.getX(), p.getY());
                }
                to.add(new Upper(FACTORY.createPolygon(ring), face.outline().get(0), face.normal(), foot));
            }
        }
    }

    private static boolean rises(List<Upper> tops, Side side, double share) {
        return tops.stream().anyMatch(top -> rises(top, side, share));
    }

    private static boolean rises(Upper upper, Side side, double share) {
        return rise(upper, side, share).isPresent();
    }

    /** Metres above the side; empty where it does not rise by as much as a wall does. */
    private static OptionalDouble rise(Upper upper, Side side, double share) {
        Vector3D at = side.from().add(side.way().multiply(share * side.length()));
        Point point = FACTORY.createPoint(new Coordinate(at.getX(), at.getY()));
        if (upper.foot() > at.getZ() + LEAST_RISE
                || upper.plan().getEnvelopeInternal().distance(point.getEnvelopeInternal()) > WALL) {
            return OptionalDouble.empty();
        }
        DistanceOp nearest = new DistanceOp(upper.plan(), point);
        if (nearest.distance() > WALL) {
            return OptionalDouble.empty();
        }
        Coordinate there = nearest.nearestPoints()[0];
        // A wall may stand under the roof beside its edge, where the roof is higher than there.
        boolean wall = upper.foot() > Double.NEGATIVE_INFINITY;
        double roof = wall ? Math.max(at.getZ(), PlanViews.height(side.plane(), there)) : at.getZ();
        double rise = upper.height(there) - roof;
        return rise > LEAST_RISE ? OptionalDouble.of(rise) : OptionalDouble.empty();
    }
}
