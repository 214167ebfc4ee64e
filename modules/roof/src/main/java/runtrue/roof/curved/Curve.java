package runtrue.roof.curved;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import runtrue.roof.PlaneFrame;
import runtrue.roof.RoofTolerance;

/**
 * How a singly curved plane lies in space, and where a point of its development is: u runs along the axis, v along the
 * arc from the start of the section, w square to the surface, out of the roof. Metres, moved by the drop origin.
 *
 * @param origin the point at u = 0, v = 0
 * @param axis unit length, the direction of u
 * @param side unit length, level, square to the axis: the way from the start of the section to its end
 * @param deviation greatest distance of a fold of the facets from the circle fitted to them
 * @param leastPitch of the tangent anywhere along the section, radians
 * @param greatestPitch likewise
 * @param leastFacetPitch of the facets as modelled, radians
 * @param greatestFacetPitch likewise
 * @param facets how many it was read from
 */
public record Curve(
        Vector3D origin,
        Vector3D axis,
        Vector3D side,
        Section section,
        double deviation,
        double leastPitch,
        double greatestPitch,
        double leastFacetPitch,
        double greatestFacetPitch,
        int facets) {
    private static final double CROWN_AT_END = RoofTolerance.CROWN_AT_END.si();
    private static final double AT_END = RoofTolerance.FACET_JOINT.si();
    private static final double LEVEL = Math.sin(RoofTolerance.FLAT_PLANE.si());

    private Vector3D top() {
        return axis.cross(side);
    }

    /** Radius of the circle, metres; empty when the section is no circle. */
    public OptionalDouble radius() {
        return section instanceof Arc arc ? OptionalDouble.of(arc.radius()) : OptionalDouble.empty();
    }

    /** The point at u, v of the development. */
    public Vector3D at(double u, double v) {
        Vector2D p = section.at(v);
        return origin.add(axis.multiply(u)).add(side.multiply(p.getX())).add(top().multiply(p.getY()));
    }

    public double u(Vector3D point) {
        return point.subtract(origin).dot(axis);
    }

    public double v(Vector3D point) {
        Vector3D from = point.subtract(origin);
        return section.nearest(Vector2D.of(from.dot(side), from.dot(top())));
    }

    /** Whether the section is a line that a sheet could follow. */
    boolean isSmooth() {
        return !(section instanceof Folds folds) || Sections.isSmooth(folds.points());
    }

    /** How far the chord between the folds on either side lies below the surface at an arc length, metres; 0 at folds. */
    double sagitta(double v) {
        List<Double> stations = section.stations();
        for (int i = 0; i + 1 < stations.size(); i++) {
            if (stations.get(i) <= v && v <= stations.get(i + 1)) {
                Vector2D a = section.at(stations.get(i));
                Vector2D chord = section.at(stations.get(i + 1)).subtract(a);
                Vector2D from = section.at(v).subtract(a);
                return (chord.getX() * from.getY() - chord.getY() * from.getX()) / chord.norm();
            }
        }
        return 0;
    }

    /**
     * The axes of the plane that touches the surface at an arc length, with its own u and v equal to the development's
     * there: what lies near can be measured in it as on a flat plane.
     */
    public PlaneFrame touching(double v) {
        Vector2D tangent = section.tangent(v);
        Vector3D up = side.multiply(tangent.getX()).add(top().multiply(tangent.getY()));
        return new PlaneFrame(at(0, v).subtract(up.multiply(v)), axis, up, axis.cross(up));
    }

    /** u, v of the place on the surface above or below a point, of which x and y count. */
    public Coordinate below(double x, double y) {
        Vector3D from = Vector3D.of(x, y, origin.getZ()).subtract(origin);
        double v = section.atSide(from.dot(side));
        // A sloping axis carries the surface's height over into the position along it.
        Vector3D ahead = Vector3D.of(axis.getX(), axis.getY(), 0);
        double shift = section.at(v).getY() * top().dot(ahead);
        return new Coordinate((from.dot(ahead) - shift) / ahead.normSq(), v);
    }

    /** A line of the development in space, with points at every fold that it passes. */
    public List<Vector3D> lift(LineString line) {
        Coordinate[] points = line.getCoordinates();
        List<Vector3D> lifted = new ArrayList<>();
        for (int i = 0; i + 1 < points.length; i++) {
            lifted.add(at(points[i].x, points[i].y));
            for (Coordinate c : between(points[i], points[i + 1])) {
                lifted.add(at(c.x, c.y));
            }
        }
        Coordinate last = points[points.length - 1];
        if (!line.isClosed()) {
            lifted.add(at(last.x, last.y));
        }
        return lifted;
    }

    /** Places at which a straight line of the development passes folds, none of them at its ends. */
    private List<Coordinate> between(Coordinate a, Coordinate b) {
        double low = Math.min(a.y, b.y) + AT_END;
        double high = Math.max(a.y, b.y) - AT_END;
        return section.stations().stream()
                .filter(v -> v > low && v < high)
                .sorted(a.y < b.y ? Comparator.naturalOrder() : Comparator.reverseOrder())
                .map(v -> new Coordinate(a.x + (v - a.y) / (b.y - a.y) * (b.x - a.x), v))
                .toList();
    }

    /** Whether the roof falls to both ends of its section, as a barrel with eaves at both sides does, or to its middle. */
    public boolean fallsBothWays() {
        double length = section.length();
        double in = Math.min(CROWN_AT_END, length / 4);
        return rise(in) < -LEVEL || rise(length - in) < -LEVEL;
    }

    /** Whether water leaves at the start of the section. */
    public boolean isLowAtStart() {
        return rise(0) > 0;
    }

    /** Whether water leaves at the end of the section. */
    public boolean isLowAtEnd() {
        return rise(section.length()) < 0;
    }

    private double rise(double v) {
        return section.tangent(v).getY() * top().getZ();
    }

    /** The part of the same surface on some of its facets, from a place of the development on; u and v start there. */
    Curve part(double u, double from, double to, double[] facetPitches, int ownFacets) {
        return new Curve(
                        at(u, from),
                        axis,
                        side,
                        section.part(from, to),
                        deviation,
                        facetPitches[0],
                        facetPitches[facetPitches.length - 1],
                        facetPitches[0],
                        facetPitches[facetPitches.length - 1],
                        ownFacets)
                .withPitchesOfTangents();
    }

    /** The same seen from the other side of the roof: u and v run the other way, v from the end of the section. */
    Curve turned() {
        return new Curve(
                at(0, section.length()),
                axis.negate(),
                side.negate(),
                section.turned(),
                deviation,
                leastPitch,
                greatestPitch,
                leastFacetPitch,
                greatestFacetPitch,
                facets);
    }

    /** Pitch of the tangents at both ends of an arc and, where it lies between them, at the crown; the facets' if it is none. */
    Curve withPitchesOfTangents() {
        if (!(section instanceof Arc arc)) {
            return this;
        }
        boolean crown = arc.crown() > 0 && arc.crown() < arc.length();
        double[] pitches = DoubleStream.of(0, arc.length(), crown ? arc.crown() : 0)
                .map(v -> Math.acos(Math.min(1, touching(v).normal().getZ())))
                .sorted()
                .toArray();
        return new Curve(
                origin,
                axis,
                side,
                section,
                deviation,
                pitches[0],
                pitches[pitches.length - 1],
                leastFacetPitch,
                greatestFacetPitch,
                facets);
    }
}
