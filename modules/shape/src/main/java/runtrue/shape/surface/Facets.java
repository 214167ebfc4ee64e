package runtrue.shape.surface;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.LongConsumer;
import java.util.function.ToIntFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Fineness;

/**
 * One face cut into triangles in the plane of its surface's parameters. The plane is stretched so that a step which uses
 * up the chord tolerance is 1 long either way: round triangles there are as good as they get in space, and on a cylinder
 * they become strips along it.
 */
final class Facets {
    /** A new corner keeps this distance from the outline, in steps: nearer ones would make slivers. */
    private static final double CLEAR = 0.4;

    /** Edges shorter than this, in steps, are not halved: what is not smooth there stays so. */
    private static final double SHORTEST = 1e-3;

    private final Surface surface;
    private final Fineness fineness;
    private final LongConsumer budget;
    private final List<Node> nodes = new ArrayList<>();
    private final List<Vector3D> places = new ArrayList<>();
    private final double[] columns;
    private final double[] rows;
    private final double ou;
    private final double ov;
    private final double su;
    private final double sv;
    private final Polygon polygon;

    Facets(Surface surface, List<List<Node>> rings, Fineness fineness, LongConsumer budget) {
        this.surface = surface;
        this.fineness = fineness;
        this.budget = budget;
        Window window = Window.of(rings.get(0));
        if (!(window.u1() > window.u0() && window.v1() > window.v0())) {
            throw new ShapeException("its loops enclose nothing on its surface");
        }
        this.columns = surface.stations(0, window, fineness);
        this.rows = surface.stations(1, window, fineness);
        budget.accept(2L * (columns.length - 1) * (rows.length - 1));
        this.ou = window.u0();
        this.ov = window.v0();
        this.su = (columns.length - 1) / (window.u1() - window.u0());
        this.sv = (rows.length - 1) / (window.v1() - window.v0());
        this.polygon = polygon(rings);
        if (!polygon.isValid()) {
            throw new ShapeException("its loops cross each other or themselves on its surface");
        }
    }

    private Coordinate stretched(double u, double v) {
        return new Coordinate(su * (u - ou), sv * (v - ov));
    }

    private Polygon polygon(List<List<Node>> rings) {
        GeometryFactory factory = new GeometryFactory();
        LinearRing[] holes = new LinearRing[rings.size() - 1];
        LinearRing shell = ring(rings.get(0), factory);
        for (int i = 0; i < holes.length; i++) {
            holes[i] = ring(rings.get(i + 1), factory);
        }
        return factory.createPolygon(shell, holes);
    }

    private LinearRing ring(List<Node> ring, GeometryFactory factory) {
        List<Coordinate> result = new ArrayList<>(ring.size() + 1);
        for (Node node : ring) {
            Coordinate c = stretched(node.u(), node.v());
            if (result.isEmpty() || !c.equals2D(result.get(result.size() - 1))) {
                result.add(c);
                nodes.add(node);
            }
        }
        if (result.size() > 1 && result.get(0).equals2D(result.get(result.size() - 1))) {
            result.remove(result.size() - 1);
            nodes.remove(nodes.size() - 1);
        }
        if (result.size() < 3) {
            throw new ShapeException("its loops enclose nothing on its surface");
        }
        result.add(result.get(0));
        return factory.createLinearRing(result.toArray(new Coordinate[0]));
    }

    /** Three point numbers a triangle, counter-clockwise about the surface's normal; at poles two may be the same. */
    int[] corners(ToIntFunction<Place> newPoint) {
        Net net = outlined();
        for (Node node : nodes) {
            places.add(surface.at(node.u(), node.v()));
        }
        fill(net, newPoint);
        refine(net, newPoint);
        int[] result = new int[3 * net.triangles()];
        for (int e = 0; e < result.length; e++) {
            result[e] = nodes.get(net.corner(e)).point();
        }
        return result;
    }

    private Net outlined() {
        double[] xy = new double[2 * nodes.size()];
        Map<Coordinate, Integer> numbers = new HashMap<>();
        for (int i = 0; i < nodes.size(); i++) {
            Coordinate c = stretched(nodes.get(i).u(), nodes.get(i).v());
            xy[2 * i] = c.x;
            xy[2 * i + 1] = c.y;
            numbers.put(c, i);
        }
        Geometry triangles = PolygonTriangulator.triangulate(polygon);
        int[] corners = new int[3 * triangles.getNumGeometries()];
        for (int t = 0; t < triangles.getNumGeometries(); t++) {
            Coordinate[] c = triangles.getGeometryN(t).getCoordinates();
            boolean turn = (c[1].x - c[0].x) * (c[2].y - c[0].y) < (c[1].y - c[0].y) * (c[2].x - c[0].x);
            for (int k = 0; k < 3; k++) {
                Integer number = numbers.get(c[turn ? 2 - k : k]);
                if (number == null) {
                    throw new ShapeException("its loops touch each other on its surface");
                }
                corners[3 * t + k] = number;
            }
        }
        return new Net(xy, corners);
    }

    /** Corners where rows and columns cross inside. */
    private void fill(Net net, ToIntFunction<Place> newPoint) {
        if (rows.length < 3 || columns.length < 3) {
            return;
        }
        IndexedPointInAreaLocator area = new IndexedPointInAreaLocator(polygon);
        IndexedFacetDistance outline = new IndexedFacetDistance(polygon.getBoundary());
        for (int k = 1; k + 1 < rows.length; k++) {
            for (int i = 1; i + 1 < columns.length; i++) {
                Coordinate c = stretched(columns[i], rows[k]);
                if (area.locate(c) == Location.INTERIOR
                        && !outline.isWithinDistance(polygon.getFactory().createPoint(c), CLEAR)
                        && net.add(c.x, c.y) >= 0) {
                    add(columns[i], rows[k], newPoint);
                }
            }
        }
    }

    private void add(double u, double v, ToIntFunction<Place> newPoint) {
        nodes.add(new Node(u, v, newPoint.applyAsInt(new Place(u, v))));
        places.add(surface.at(u, v));
    }

    /** Halves inner edges that leave the surface out by more than the tolerance, until none does. */
    private void refine(Net net, ToIntFunction<Place> newPoint) {
        Set<Long> good = new HashSet<>();
        boolean again = true;
        while (again) {
            again = false;
            int edges = 3 * net.triangles();
            for (int e = 0; e < edges; e++) {
                int from = net.corner(e);
                int to = net.end(e);
                if (net.beyond(e) < e || good.contains(key(from, to))) {
                    continue;
                }
                if (bent(from, to)) {
                    budget.accept(2);
                    net.halve(e);
                    Node a = nodes.get(from);
                    Node b = nodes.get(to);
                    add(0.5 * (a.u() + b.u()), 0.5 * (a.v() + b.v()), newPoint);
                    again = true;
                } else {
                    good.add(key(from, to));
                }
            }
        }
    }

    private static long key(int from, int to) {
        return (long) Math.min(from, to) << 32 | Math.max(from, to);
    }

    /**
     * Measured across the surface, because a parameter may run unevenly along it, and from chords between the surface's
     * own points, because a file's edges may lie a little off it.
     */
    private boolean bent(int from, int to) {
        Node a = nodes.get(from);
        Node b = nodes.get(to);
        if (Math.hypot(su * (b.u() - a.u()), sv * (b.v() - a.v())) < SHORTEST) {
            return false;
        }
        double limit = fineness.chord() * (1 + 1e-6) + fineness.point();
        Vector3D chord = places.get(to).subtract(places.get(from));
        Vector3D across = normal(0.5 * (a.u() + b.u()), 0.5 * (a.v() + b.v()));
        for (int i = 1; i < 4; i++) {
            double share = 0.25 * i;
            Vector3D between = surface.at(a.u() + share * (b.u() - a.u()), a.v() + share * (b.v() - a.v()));
            Vector3D off = between.subtract(places.get(from).add(chord.multiply(share)));
            if (Math.abs(off.dot(across)) > limit) {
                return true;
            }
        }
        return false;
    }

    /** Unit normal; zero where the surface has none. */
    private Vector3D normal(double u, double v) {
        double du = SHORTEST / su;
        double dv = SHORTEST / sv;
        Vector3D along = surface.at(u + du, v).subtract(surface.at(u - du, v));
        Vector3D up = surface.at(u, v + dv).subtract(surface.at(u, v - dv));
        Vector3D normal = along.cross(up);
        double norm = normal.norm();
        return norm > 0 ? normal.multiply(1 / norm) : Vector3D.ZERO;
    }
}
