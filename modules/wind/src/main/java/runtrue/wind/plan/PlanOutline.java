package runtrue.wind.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.locationtech.jts.algorithm.MinimumAreaRectangle;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;

/**
 * The outer line of a roof or plane in plan, without jogs that do not shift the wind: its edges, its outward corners,
 * the rectangle around it and strips along it.
 */
public final class PlanOutline {
    /** Jogs below this do not shift the wind zones, metres. */
    private static final double JOG = 0.05;

    /** An outward corner turns by more than this; rounded plans have edges but no corners. */
    private static final double CORNER_TURN = Math.toRadians(30);

    /** Parts of a plan below this count as noise, square metres. */
    private static final double SPECK = 1e-4;

    private final Polygon outline;
    private final List<PlanEdge> edges;

    private PlanOutline(Polygon outline, List<PlanEdge> edges) {
        this.outline = outline;
        this.edges = List.copyOf(edges);
    }

    /** Of the outer ring; holes make no edges. */
    public static PlanOutline of(Polygon polygon) {
        Polygon outer = Regions.FACTORY.createPolygon(polygon.getExteriorRing().getCoordinates());
        Geometry simple = TopologyPreservingSimplifier.simplify(outer, JOG);
        Polygon outline = simple instanceof Polygon p && p.getArea() > SPECK ? p : outer;
        return new PlanOutline(outline, edgesOf(outline.getExteriorRing().getCoordinates()));
    }

    /** Of each polygon of a plane. */
    public static List<PlanOutline> each(Geometry plan) {
        List<PlanOutline> outlines = new ArrayList<>();
        for (int i = 0; i < plan.getNumGeometries(); i++) {
            if (plan.getGeometryN(i) instanceof Polygon p && p.getArea() > SPECK) {
                outlines.add(of(p));
            }
        }
        return outlines;
    }

    public List<PlanEdge> edges() {
        return edges;
    }

    public Polygon polygon() {
        return outline;
    }

    /** Lowest and highest distance of the outline along a unit vector, metres from the origin. */
    public double[] extent(double x, double y) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Coordinate c : outline.getExteriorRing().getCoordinates()) {
            double along = c.x * x + c.y * y;
            low = Math.min(low, along);
            high = Math.max(high, along);
        }
        return new double[] {low, high};
    }

    /** How far the outline reaches along a unit vector, metres. */
    public double width(double x, double y) {
        double[] extent = extent(x, y);
        return extent[1] - extent[0];
    }

    /** Everything between two distances along a unit vector, across the whole outline. */
    public Polygon band(double x, double y, double from, double to) {
        double[] across = extent(-y, x);
        double left = across[0] - 1;
        double right = across[1] + 1;
        Coordinate[] ring = {
            at(x, y, from, left), at(x, y, to, left), at(x, y, to, right), at(x, y, from, right), at(x, y, from, left)
        };
        return Regions.FACTORY.createPolygon(ring);
    }

    private static Coordinate at(double x, double y, double along, double across) {
        return new Coordinate(along * x - across * y, along * y + across * x);
    }

    /** Whether it fills all but a hundredth of the rectangle around it that has an edge along a unit vector. */
    public boolean rectangular(double x, double y) {
        return outline.getArea() > 0.99 * width(x, y) * width(-y, x);
    }

    /** Sides of the least rectangle around it, the shorter first, metres. */
    public double[] sides() {
        Coordinate[] ring = leastRectangle();
        double a = ring[0].distance(ring[1]);
        double b = ring[1].distance(ring[2]);
        return new double[] {Math.min(a, b), Math.max(a, b)};
    }

    /** Unit vector along the shorter side of the least rectangle around it. */
    public double[] shortAxis() {
        Coordinate[] ring = leastRectangle();
        int from = ring[0].distance(ring[1]) <= ring[1].distance(ring[2]) ? 0 : 1;
        double length = ring[from].distance(ring[from + 1]);
        return new double[] {(ring[from + 1].x - ring[from].x) / length, (ring[from + 1].y - ring[from].y) / length};
    }

    private Coordinate[] leastRectangle() {
        return MinimumAreaRectangle.getMinimumRectangle(outline).getCoordinates();
    }

    /** What lies nearer to the outline than a width, re-entrant corners filled. */
    public Geometry rim(double width) {
        BufferParameters mitred = new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 20);
        return Regions.difference(outline, BufferOp.bufferOp(outline, -width, mitred));
    }

    /** Where the strips of both edges of an outward corner lie over each other. */
    public Geometry corners(double width) {
        return corners(width, Double.POSITIVE_INFINITY);
    }

    /** The same, with both legs no longer than {@code leg}: an L of two strips of {@code width} where it is longer. */
    public Geometry corners(double width, double leg) {
        List<Geometry> corners = new ArrayList<>();
        for (int i = 0; i < edges.size(); i++) {
            PlanEdge before = edges.get(i);
            PlanEdge after = edges.get((i + 1) % edges.size());
            if (!before.cornerTo()) {
                continue;
            }
            if (Double.isFinite(leg)) {
                corners.add(before.stripAtEnd(width, leg));
                corners.add(after.stripAtStart(width, leg));
            } else {
                corners.add(Regions.intersection(before.strip(width), after.strip(width)));
            }
        }
        return Regions.union(corners);
    }

    private static List<PlanEdge> edgesOf(Coordinate[] given) {
        List<Coordinate> ring = new ArrayList<>(List.of(given));
        ring.remove(ring.size() - 1);
        if (!Orientation.isCCW(given)) {
            Collections.reverse(ring);
        }
        int n = ring.size();
        boolean[] corner = new boolean[n];
        for (int i = 0; i < n; i++) {
            corner[i] = turn(ring.get((i + n - 1) % n), ring.get(i), ring.get((i + 1) % n)) > CORNER_TURN;
        }
        List<PlanEdge> edges = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n;
            edges.add(new PlanEdge(ring.get(i), ring.get(next), corner[i], corner[next]));
        }
        return edges;
    }

    /** Turn to the left at b, radians. */
    private static double turn(Coordinate a, Coordinate b, Coordinate c) {
        double turn = Math.atan2(c.y - b.y, c.x - b.x) - Math.atan2(b.y - a.y, b.x - a.x);
        return Math.IEEEremainder(turn, 2 * Math.PI);
    }
}
