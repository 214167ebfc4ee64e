package runtrue.wind.plan;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/**
 * A straight piece of an outline; what it bounds lies to the left from {@code from} to {@code to}.
 *
 * @param cornerFrom whether an outward corner of the outline is at its start
 * @param cornerTo whether one is at its end
 */
public record PlanEdge(Coordinate from, Coordinate to, boolean cornerFrom, boolean cornerTo) {
    public double length() {
        return from.distance(to);
    }

    /** Cosine between the way out of the edge and the direction the wind comes from: 1 for an edge that faces it. */
    public double facing(double windX, double windY) {
        return (-(to.y - from.y) * windX + (to.x - from.x) * windY) / length();
    }

    public LineString line() {
        return Regions.FACTORY.createLineString(new Coordinate[] {from.copy(), to.copy()});
    }

    /** Inward strip of a depth along the whole edge. */
    public Polygon strip(double depth) {
        return strip(depth, 0, length());
    }

    /** Inward strip of a depth between two distances from the start of the edge, metres. */
    public Polygon strip(double depth, double start, double end) {
        double dx = (to.x - from.x) / length();
        double dy = (to.y - from.y) / length();
        Coordinate a = new Coordinate(from.x + dx * start, from.y + dy * start);
        Coordinate b = new Coordinate(from.x + dx * end, from.y + dy * end);
        Coordinate c = new Coordinate(b.x - dy * depth, b.y + dx * depth);
        Coordinate d = new Coordinate(a.x - dy * depth, a.y + dx * depth);
        return Regions.FACTORY.createPolygon(new Coordinate[] {a, b, c, d, a.copy()});
    }

    /** The part of the strip next to the start, when an outward corner is there and it is no longer than the edge. */
    public Polygon stripAtStart(double depth, double along) {
        return strip(depth, 0, Math.min(along, length()));
    }

    public Polygon stripAtEnd(double depth, double along) {
        return strip(depth, Math.max(0, length() - along), length());
    }
}
