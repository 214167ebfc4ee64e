package runtrue.bill.offcut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.RoofPlane;
import runtrue.roof.Sheet;

/**
 * A sheet in the axes of the full-width sheet that it is cut from: x from its left rib, looking up the fall, y along it.
 *
 * @param order length that it is ordered in, metres
 * @param blank of the square-cut strip by its geometry, metres; {@code order} may be more or less
 * @param points low and high end at rising x, straight between them
 */
record Strip(String plane, int number, double order, double blank, List<Ends> points) {
    private static final double MILLIMETRE = 1e-3;

    /** At one x. */
    record Ends(double x, double low, double high) {}

    /**
     * Empty for a strip with openings, or in more than one part.
     *
     * @param left x of the strip's left side in the full-width sheet
     */
    static Optional<Strip> of(RoofPlane plane, Sheet sheet, double order, double left) {
        Envelope box = new Envelope(
                sheet.u().from(), sheet.u().to(), sheet.v().from(), sheet.v().to());
        Geometry part = plane.outline().getFactory().toGeometry(box).intersection(plane.outline());
        if (!(part instanceof Polygon polygon) || polygon.getNumInteriorRing() > 0 || sheet.cut()) {
            return Optional.empty();
        }
        Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
        TreeSet<Double> stations = new TreeSet<>();
        for (Coordinate c : ring) {
            Double near = stations.floor(c.x + MILLIMETRE);
            if (near == null || near < c.x - MILLIMETRE) {
                stations.add(c.x);
            }
        }
        List<Ends> points = new ArrayList<>();
        for (double u : stations) {
            points.add(ends(ring, u, left - sheet.u().from()));
        }
        return Optional.of(new Strip(plane.id(), sheet.number(), order, sheet.blank(), points));
    }

    private static Ends ends(Coordinate[] ring, double u, double shift) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i + 1 < ring.length; i++) {
            Coordinate a = ring[i];
            Coordinate b = ring[i + 1];
            if (Math.min(a.x, b.x) - MILLIMETRE <= u && u <= Math.max(a.x, b.x) + MILLIMETRE) {
                boolean upright = Math.abs(b.x - a.x) <= MILLIMETRE;
                double share = upright ? 0 : Math.min(1, Math.max(0, (u - a.x) / (b.x - a.x)));
                double at = a.y + (b.y - a.y) * share;
                low = Math.min(low, upright ? Math.min(a.y, b.y) : at);
                high = Math.max(high, upright ? Math.max(a.y, b.y) : at);
            }
        }
        return new Ends(u + shift, low, high);
    }

    double from() {
        return points.get(0).x();
    }

    double to() {
        return points.get(points.size() - 1).x();
    }

    double lowest() {
        return points.stream().mapToDouble(Ends::low).min().orElseThrow();
    }

    double highest() {
        return points.stream().mapToDouble(Ends::high).max().orElseThrow();
    }

    /** What both ends are at an x within the strip. */
    Ends at(double x) {
        for (int i = 0; i + 1 < points.size(); i++) {
            Ends a = points.get(i);
            Ends b = points.get(i + 1);
            if (x <= b.x()) {
                double share = Math.max(0, (x - a.x()) / (b.x() - a.x()));
                return new Ends(x, a.low() + (b.low() - a.low()) * share, a.high() + (b.high() - a.high()) * share);
            }
        }
        return points.get(points.size() - 1);
    }

    /** Whether they have more than a line of the full width in common. */
    boolean sharesWidthWith(Strip other) {
        return Math.min(to(), other.to()) - Math.max(from(), other.from()) > MILLIMETRE;
    }

    /** How far the other must be moved up from its own place to lie above this one. */
    double liftOf(Strip above) {
        double lift = Double.NEGATIVE_INFINITY;
        double left = Math.max(from(), above.from());
        double right = Math.min(to(), above.to());
        List<Double> stations = new ArrayList<>(List.of(left, right));
        points.forEach(p -> stations.add(p.x()));
        above.points().forEach(p -> stations.add(p.x()));
        for (double x : stations) {
            if (left <= x && x <= right) {
                lift = Math.max(lift, at(x).high() - above.at(x).low());
            }
        }
        return lift;
    }
}
