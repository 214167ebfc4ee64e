package runtrue.shape.bool;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.TopologyException;
import org.locationtech.jts.noding.snap.SnappingNoder;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import runtrue.shape.ShapeException;
import runtrue.shape.mesh.FacePlane;
import runtrue.shape.mesh.Flat;
import runtrue.shape.mesh.Loops;
import runtrue.shape.mesh.Points;

/**
 * The general overlay of a face with a mask, by JTS in the plane's shadow. Corners that were there before keep their
 * points; new ones are lifted back into the plane.
 */
final class CrossingOverlay {
    private final Points points;
    private final FacePlane plane;
    private final Flat flat;
    private final double tolerance;
    private final GeometryFactory factory = new GeometryFactory();
    private final Map<Coordinate, Integer> corners = new HashMap<>();

    CrossingOverlay(Points points, FacePlane plane, Flat flat, double tolerance) {
        this.points = points;
        this.plane = plane;
        this.flat = flat;
        this.tolerance = tolerance;
    }

    List<int[][]> of(int[][] face, List<int[][]> mask, boolean within) {
        Polygon own = polygon(face);
        Geometry other =
                factory.createMultiPolygon(mask.stream().map(this::polygon).toArray(Polygon[]::new));
        int operation = within ? OverlayNG.INTERSECTION : OverlayNG.DIFFERENCE;
        Geometry result = overlay(own, other, operation);
        List<int[][]> faces = new ArrayList<>();
        for (int i = 0; i < result.getNumGeometries(); i++) {
            if (result.getGeometryN(i) instanceof Polygon part && part.getArea() > 0.5 * tolerance * part.getLength()) {
                faces.add(face(part));
            }
        }
        return faces;
    }

    private Geometry overlay(Geometry own, Geometry other, int operation) {
        try {
            return OverlayNG.overlay(own, other, operation, null, new SnappingNoder(tolerance));
        } catch (TopologyException snapped) {
            try {
                return OverlayNGRobust.overlay(own, other, operation);
            } catch (TopologyException e) {
                throw new ShapeException("Two faces could not be cut with each other: an outline crosses itself.");
            }
        }
    }

    private Polygon polygon(int[][] face) {
        LinearRing[] holes = new LinearRing[face.length - 1];
        for (int i = 1; i < face.length; i++) {
            holes[i - 1] = ring(face[i]);
        }
        return factory.createPolygon(ring(face[0]), holes);
    }

    private LinearRing ring(int[] loop) {
        Coordinate[] ring = new Coordinate[loop.length + 1];
        double[] xyz = points.raw();
        for (int i = 0; i < loop.length; i++) {
            ring[i] = new Coordinate(flat.u(xyz, loop[i]), flat.v(xyz, loop[i]));
            corners.putIfAbsent(ring[i], loop[i]);
        }
        ring[loop.length] = ring[0];
        return factory.createLinearRing(ring);
    }

    private int[][] face(Polygon polygon) {
        int[][] face = new int[1 + polygon.getNumInteriorRing()][];
        face[0] = loop(polygon.getExteriorRing(), true);
        for (int i = 1; i < face.length; i++) {
            face[i] = loop(polygon.getInteriorRingN(i - 1), false);
        }
        return face;
    }

    private int[] loop(LinearRing ring, boolean counterClockwise) {
        Coordinate[] coordinates = ring.getCoordinates();
        int[] loop = new int[coordinates.length - 1];
        for (int i = 0; i < loop.length; i++) {
            loop[i] = corners.computeIfAbsent(coordinates[i], this::lifted);
        }
        boolean isCounterClockwise = flat.area(points.raw(), loop) > 0;
        return isCounterClockwise == counterClockwise ? loop : Loops.turned(loop);
    }

    private int lifted(Coordinate c) {
        return flat.lift(plane, c.x, c.y, points);
    }
}
