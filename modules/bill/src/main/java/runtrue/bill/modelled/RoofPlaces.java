package runtrue.bill.modelled;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import runtrue.roof.Roof;
import runtrue.roof.RoofPlane;

/** On which roof plane a place is. */
final class RoofPlaces {
    /** Fasteners of flashings stand a little outside of the plane's outline. */
    private static final double RIM = 0.25;

    /** From the tops of deep purlins under a thick build-up ... */
    private static final double BELOW = 0.6;

    /** ... to the top of a tall rib or of a flashing over it. */
    private static final double ABOVE = 0.3;

    private final List<Area> areas = new ArrayList<>();

    private record Area(RoofPlane plane, PointOnGeometryLocator locator) {
        boolean contains(Vector3D point) {
            return locator.locate(new Coordinate(plane.u(point), plane.v(point))) != Location.EXTERIOR;
        }

        double distance(Vector3D point) {
            return plane.frameNear(point).w(point);
        }
    }

    RoofPlaces(Roof roof) {
        roof.planes()
                .forEach(p -> areas.add(new Area(
                        p.plane(),
                        new IndexedPointInAreaLocator(p.plane().outline().buffer(RIM)))));
    }

    /** The nearest of the planes that have it within their build-up; the first of those that are as near. */
    Optional<RoofPlane> at(Vector3D point) {
        Area nearest = null;
        double least = Double.POSITIVE_INFINITY;
        for (Area area : areas) {
            double above = area.distance(point);
            if (above >= -BELOW && above <= ABOVE && Math.abs(above) < least && area.contains(point)) {
                nearest = area;
                least = Math.abs(above);
            }
        }
        return nearest == null ? Optional.empty() : Optional.of(nearest.plane());
    }
}
