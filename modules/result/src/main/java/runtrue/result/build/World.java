package runtrue.result.build;

import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import runtrue.result.BodyResult;
import runtrue.result.Direction;
import runtrue.result.Point;
import runtrue.roof.RoofPlane;

/**
 * Back from the local origin to the world.
 *
 * @param origin drop origin in world metres, added to every point
 */
record World(Vector3D origin) {
    Point point(Vector3D moved) {
        return place(moved.add(origin));
    }

    /** A point that is in world coordinates already. */
    static Point place(Vector3D world) {
        return new Point(Rounded.of(world.getX()), Rounded.of(world.getY()), Rounded.of(world.getZ()));
    }

    static Direction direction(Vector3D unit) {
        return new Direction(Rounded.of(unit.getX()), Rounded.of(unit.getY()), Rounded.of(unit.getZ()));
    }

    /** A ring of a plane's u, v, counter-clockwise seen from above the roof when {@code outer}, else clockwise; not closed. */
    List<Point> ring(RoofPlane plane, LinearRing ring, boolean outer) {
        List<Point> points = plane.lift(ring).stream().map(this::point).toList();
        return Orientation.isCCW(ring.getCoordinates()) == outer ? points : reversed(points);
    }

    /** Polygons of a plane's u, v; lines and points among them have no area and are passed over. */
    List<BodyResult.Region> regions(RoofPlane plane, Geometry region) {
        return IntStream.range(0, region.getNumGeometries())
                .mapToObj(region::getGeometryN)
                .filter(Polygon.class::isInstance)
                .map(Polygon.class::cast)
                .filter(p -> !p.isEmpty())
                .map(p -> region(plane, p))
                .toList();
    }

    private BodyResult.Region region(RoofPlane plane, Polygon polygon) {
        return new BodyResult.Region(
                ring(plane, polygon.getExteriorRing(), true),
                IntStream.range(0, polygon.getNumInteriorRing())
                        .mapToObj(i -> ring(plane, polygon.getInteriorRingN(i), false))
                        .toList());
    }

    private static List<Point> reversed(List<Point> points) {
        return IntStream.range(0, points.size())
                .mapToObj(i -> points.get(points.size() - 1 - i))
                .toList();
    }
}
