package runtrue.roof.plane;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import runtrue.roof.PlaneFrame;
import runtrue.roof.flat.Overlays;
import runtrue.roof.skin.SkinFace;

/** Outlines in a plane's u, v, metres. */
public final class Outlines {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private Outlines() {}

    /** A face as a polygon in the frame. */
    static Polygon polygon(SkinFace face, PlaneFrame frame) {
        LinearRing[] holes = face.holes().stream().map(h -> ring(h, frame)).toArray(LinearRing[]::new);
        return FACTORY.createPolygon(ring(face.outline(), frame), holes);
    }

    /** A polygon without its holes. */
    public static Polygon shell(Polygon polygon) {
        return FACTORY.createPolygon(polygon.getExteriorRing());
    }

    /** Polygons joined to as few as possible, gaps up to {@code joint} metres bridged, with square corners kept. */
    public static List<Polygon> join(List<Polygon> polygons, double joint) {
        List<Polygon> parts = polygons(polygons.size() == 1 ? polygons.get(0) : Overlays.union(polygons));
        List<Polygon> joined = new ArrayList<>();
        for (List<Polygon> near : nearGroups(parts, joint)) {
            // A slit within one part (two slabs that touch at a corner only) needs closing as much as a gap does.
            boolean whole = near.size() == 1 && polygons.size() == 1;
            List<Polygon> closed = whole ? near : polygons(closed(near, joint / 2 + 1e-6));
            closed.forEach(p -> joined.addAll(apartAtNecks(p, joint / 2)));
        }
        return joined.stream().map(Outlines::straightened).toList();
    }

    /**
     * Parts that hang together by a neck of no more than twice {@code by} are planes of their own: two slopes that meet in
     * one point of a ridge, which closing the joints around it has thickened, or a slab that another has cut through.
     */
    private static List<Polygon> apartAtNecks(Polygon polygon, double by) {
        if (isConvex(polygon)) {
            return List.of(polygon);
        }
        List<Polygon> parts = opened(polygon, by);
        return parts.size() > 1 ? parts : List.of(polygon);
    }

    /** Most planes are, and have no neck. */
    private static boolean isConvex(Polygon polygon) {
        Coordinate[] ring = polygon.getExteriorRing().getCoordinates();
        int turns = 0;
        for (int i = 0; i + 1 < ring.length; i++) {
            int turn = Orientation.index(ring[i], ring[i + 1], ring[(i + 2) % (ring.length - 1)]);
            if (turn * turns < 0) {
                return false;
            }
            turns = turn == 0 ? turns : turn;
        }
        return polygon.getNumInteriorRing() == 0;
    }

    /** Union of plan views, gaps up to a width (metres) bridged. */
    public static Geometry bridged(List<Geometry> plans, double gap) {
        if (plans.size() == 1) {
            return plans.get(0);
        }
        List<Polygon> closed = polygons(closed(polygons(Overlays.union(plans)), gap / 2)).stream()
                .map(Outlines::straightened)
                .toList();
        return closed.size() == 1 ? closed.get(0) : FACTORY.createMultiPolygon(closed.toArray(Polygon[]::new));
    }

    /** The parts of a polygon in which a strip of twice {@code by} (metres) fits, with square corners kept. */
    static List<Polygon> opened(Polygon polygon, double by) {
        Geometry core = BufferOp.bufferOp(polygon, -by, mitred());
        if (core.isEmpty()) {
            return new ArrayList<>();
        }
        // A mitre may reach past a corner of the polygon, never what is cut to it.
        Geometry grown = Overlays.intersection(BufferOp.bufferOp(core, by, mitred()), polygon);
        return new ArrayList<>(
                polygons(grown).stream().map(Outlines::straightened).toList());
    }

    private static Geometry closed(List<Polygon> parts, double by) {
        Geometry grown = BufferOp.bufferOp(FACTORY.createMultiPolygon(parts.toArray(Polygon[]::new)), by, mitred());
        return BufferOp.bufferOp(grown, -by, mitred());
    }

    private static BufferParameters mitred() {
        BufferParameters mitred = new BufferParameters(1, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 20);
        mitred.setSimplifyFactor(1e-4);
        return mitred;
    }

    private static List<List<Polygon>> nearGroups(List<Polygon> parts, double distance) {
        List<List<Polygon>> groups = new ArrayList<>();
        for (Polygon part : parts) {
            List<Polygon> merged = new ArrayList<>(List.of(part));
            groups.removeIf(group -> {
                boolean near = group.stream().anyMatch(p -> p.isWithinDistance(part, distance));
                if (near) {
                    merged.addAll(group);
                }
                return near;
            });
            groups.add(merged);
        }
        return groups;
    }

    /** The polygons of any geometry. */
    public static List<Polygon> polygons(Geometry geometry) {
        List<Polygon> polygons = new ArrayList<>();
        for (int i = 0; i < geometry.getNumGeometries(); i++) {
            if (geometry.getGeometryN(i) instanceof Polygon polygon && !polygon.isEmpty()) {
                polygons.add(polygon);
            }
        }
        return polygons;
    }

    /** Takes out corners that lie on one line with their neighbours: left over from joints. */
    private static Polygon straightened(Polygon polygon) {
        LinearRing[] holes = new LinearRing[polygon.getNumInteriorRing()];
        for (int i = 0; i < holes.length; i++) {
            holes[i] = straightened(polygon.getInteriorRingN(i));
        }
        return FACTORY.createPolygon(straightened(polygon.getExteriorRing()), holes);
    }

    private static LinearRing straightened(LinearRing ring) {
        List<Coordinate> corners = new ArrayList<>(List.of(ring.getCoordinates()));
        corners.remove(corners.size() - 1);
        boolean removed = true;
        while (removed && corners.size() > 3) {
            removed = false;
            for (int i = 0; i < corners.size() && corners.size() > 3; i++) {
                Coordinate before = corners.get((i + corners.size() - 1) % corners.size());
                Coordinate after = corners.get((i + 1) % corners.size());
                if (isOnLine(before, corners.get(i), after)) {
                    corners.remove(i--);
                    removed = true;
                }
            }
        }
        corners.add(corners.get(0));
        return FACTORY.createLinearRing(corners.toArray(Coordinate[]::new));
    }

    /**
     * Whether three corners lie on one line: a tenth of a millimetre off it is rounding. So does a spike, at whose tip the
     * ring turns back on itself; what cuts slabs by each other leaves such.
     */
    private static boolean isOnLine(Coordinate a, Coordinate corner, Coordinate b) {
        double longest = Math.max(a.distance(b), Math.max(a.distance(corner), corner.distance(b)));
        double cross = Math.abs((b.x - a.x) * (corner.y - a.y) - (b.y - a.y) * (corner.x - a.x));
        return longest < 1e-4 || cross / longest < 1e-4;
    }

    private static LinearRing ring(List<Vector3D> points, PlaneFrame frame) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Vector3D p = points.get(i % points.size());
            ring[i] = new Coordinate(frame.u(p), frame.v(p));
        }
        return FACTORY.createLinearRing(ring);
    }
}
