package runtrue.roof.edge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.locationtech.jts.simplify.TopologyPreservingSimplifier;
import runtrue.roof.PlaneLayout;
import runtrue.roof.RoofBody;
import runtrue.roof.RoofTolerance;
import runtrue.roof.Zone;
import runtrue.roof.ZoneKind;
import runtrue.roof.flat.Overlays;
import runtrue.roof.plane.Outlines;

/**
 * Corner, edge and interior zones from the plan outline of a roof: a strip of one width along every outer edge, corners
 * at outward corners only, where the strips of both edges overlap. Where a plan is not rectangular this is a simple
 * reading of the standards' figures, no published rule.
 */
public final class ZoneReader {
    /** Jogs in the outline below this do not shift the wind. */
    private static final double JOG = RoofTolerance.ZONE_JOG.si();

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final RoofBody body;
    private final double width;
    private final double step;
    private final Geometry corners;
    private final Geometry edges;
    private final Geometry interior;

    /**
     * Zones of one body.
     *
     * @param width of the strip in plan, metres
     * @param step how closely across the fall supports are looked at: the cover width, metres
     */
    public ZoneReader(RoofBody body, double width, double step) {
        this.body = body;
        this.width = width;
        this.step = step;
        BufferParameters mitred = new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 20);
        Geometry outline = TopologyPreservingSimplifier.simplify(body.plan(), JOG);
        this.interior = BufferOp.bufferOp(outline, -width, mitred);
        Geometry strip = Overlays.difference(body.plan(), interior);
        this.corners = Overlays.intersection(strip, cornersOf(outline));
        this.edges = Overlays.difference(strip, corners);
    }

    /** The zones that the plane has a part in, corners first. */
    public List<Zone> zones(PlaneLayout layout) {
        List<Zone> zones = new ArrayList<>();
        add(zones, ZoneKind.CORNER, corners, layout);
        add(zones, ZoneKind.EDGE, edges, layout);
        add(zones, ZoneKind.INTERIOR, interior, layout);
        return zones;
    }

    private void add(List<Zone> zones, ZoneKind kind, Geometry plan, PlaneLayout layout) {
        zone(body, layout, kind, width, plan, step).ifPresent(zones::add);
    }

    /** The part of the plan that lies on the plane as a zone of it; empty where it is no more than a speck. */
    public static Optional<Zone> zone(
            RoofBody body, PlaneLayout layout, ZoneKind kind, double width, Geometry plan, double step) {
        if (plan.isEmpty()) {
            return Optional.empty();
        }
        Geometry region = Overlays.intersection(
                PlanViews.onPlane(plan, layout.plane()), layout.plane().outline());
        if (region.getArea() <= JOG * JOG) {
            return Optional.empty();
        }
        double tributary = Tributary.greatest(layout, PreparedGeometryFactory.prepare(region), step);
        return Optional.of(new Zone(body.id(), layout.plane().id(), kind, width, region.getArea(), region, tributary));
    }

    private Geometry cornersOf(Geometry outline) {
        List<Geometry> corners = new ArrayList<>();
        for (Polygon polygon : Outlines.polygons(outline)) {
            Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
            boolean turned = !Orientation.isCCW(ring);
            int n = ring.length - 1;
            for (int i = 0; i < n; i++) {
                Coordinate before = ring[turned ? (i + 1) % n : (i + n - 1) % n];
                Coordinate after = ring[turned ? (i + n - 1) % n : (i + 1) % n];
                if (Orientation.index(before, ring[i], after) == Orientation.COUNTERCLOCKWISE) {
                    corners.add(Overlays.intersection(strip(before, ring[i]), strip(ring[i], after)));
                }
            }
        }
        return corners.isEmpty() ? FACTORY.createPolygon() : Overlays.union(corners);
    }

    private Geometry strip(Coordinate a, Coordinate b) {
        LineString line = FACTORY.createLineString(new Coordinate[] {a, b});
        BufferParameters square = new BufferParameters(1, BufferParameters.CAP_FLAT);
        return BufferOp.bufferOp(line, width, square);
    }
}
