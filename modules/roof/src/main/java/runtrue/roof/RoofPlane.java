package runtrue.roof;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.curved.Curve;

/**
 * One flat or singly curved part of the roof that sheets run over without a break, made of one or many elements.
 *
 * @param id stable from drop to drop, made from GlobalIds
 * @param name for people, for example {@code Hall / south plane}
 * @param frame of a curved plane: that of the plane which touches it half-way along its arc; ask {@link #at}, not the
 *     frame, for points
 * @param outline in the frame's u, v, metres, penetrations as holes; of a curved plane its development, v along the arc
 * @param pitch radians to the horizontal; of a curved plane the greatest along its arc, as it is at the eaves of a barrel
 * @param azimuth downslope direction in radians, clockwise from the model's +Y; empty when level, and when a curved
 *     plane falls to both sides
 * @param azimuthTrueNorth the same from true north; empty as well when the model states no true north
 * @param area true area, penetrations off, square metres
 * @param grossArea with them
 * @param planArea projected to the ground, penetrations off
 * @param grossPlanArea with them
 * @param eaveLevel lowest point, metres, world Z (not moved)
 * @param ridgeLevel highest point, metres, world Z (not moved)
 * @param thickness of the elements, square to the plane, metres; empty for surfaces
 * @param elements it is made of
 * @param remarks how sure, for example {@code body not closed: outward side taken as up}
 * @param curve how a curved plane lies in space; empty for flat ones
 */
public record RoofPlane(
        String id,
        String name,
        PlaneFrame frame,
        Polygon outline,
        double pitch,
        OptionalDouble azimuth,
        OptionalDouble azimuthTrueNorth,
        double area,
        double grossArea,
        double planArea,
        double grossPlanArea,
        double eaveLevel,
        double ridgeLevel,
        OptionalDouble thickness,
        String building,
        String storey,
        List<Penetration> penetrations,
        List<ReadElement> elements,
        List<String> remarks,
        Optional<Curve> curve) {
    public RoofPlane {
        penetrations = List.copyOf(penetrations);
        elements = List.copyOf(elements);
        remarks = List.copyOf(remarks);
    }

    /** The point of the plane at u, v. */
    public Vector3D at(double u, double v) {
        return curve.map(c -> c.at(u, v)).orElseGet(() -> frame.at(u, v));
    }

    /** u of the place of the plane nearest to a point. */
    public double u(Vector3D point) {
        return curve.map(c -> c.u(point)).orElseGet(() -> frame.u(point));
    }

    /** v of the place of the plane nearest to a point. */
    public double v(Vector3D point) {
        return curve.map(c -> c.v(point)).orElseGet(() -> frame.v(point));
    }

    /** The frame to measure in what lies near a point: the plane's own, or that which touches a curved plane there. */
    public PlaneFrame frameNear(Vector3D point) {
        return curve.map(c -> c.touching(c.v(point))).orElse(frame);
    }

    /** A line or ring in u, v as points in space; of a ring the first is not repeated. Curved planes add points at folds. */
    public List<Vector3D> lift(LineString line) {
        if (curve.isPresent()) {
            return curve.get().lift(line);
        }
        Coordinate[] points = line.getCoordinates();
        return Arrays.stream(points, 0, line.isClosed() ? points.length - 1 : points.length)
                .map(c -> frame.at(c.x, c.y))
                .toList();
    }
}
