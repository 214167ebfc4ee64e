package runtrue.shape.mesh;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;
import runtrue.shape.ShapeException;

/** Triangles of a face with holes, by ear clipping in the face's shadow; corners are kept as they are. */
final class Triangles {
    private Triangles() {}

    static List<int[][]> of(double[] xyz, int[][] face, FacePlane plane) {
        Flat flat = Flat.along(plane);
        Map<Coordinate, Integer> corners = new HashMap<>();
        GeometryFactory factory = new GeometryFactory();
        LinearRing shell = ring(xyz, face[0], flat, corners, factory);
        LinearRing[] holes = new LinearRing[face.length - 1];
        for (int i = 1; i < face.length; i++) {
            holes[i - 1] = ring(xyz, face[i], flat, corners, factory);
        }
        Polygon polygon = factory.createPolygon(shell, holes);
        if (!polygon.isValid()) {
            return fan(face[0]);
        }
        Geometry triangles = PolygonTriangulator.triangulate(polygon);
        List<int[][]> result = new ArrayList<>();
        for (int i = 0; i < triangles.getNumGeometries(); i++) {
            result.add(new int[][] {corners(xyz, triangles.getGeometryN(i).getCoordinates(), corners, flat)});
        }
        return result;
    }

    private static LinearRing ring(
            double[] xyz, int[] loop, Flat flat, Map<Coordinate, Integer> corners, GeometryFactory factory) {
        Coordinate[] ring = new Coordinate[loop.length + 1];
        for (int i = 0; i < loop.length; i++) {
            ring[i] = new Coordinate(flat.u(xyz, loop[i]), flat.v(xyz, loop[i]));
            corners.putIfAbsent(ring[i], loop[i]);
        }
        ring[loop.length] = ring[0];
        return factory.createLinearRing(ring);
    }

    private static int[] corners(double[] xyz, Coordinate[] triangle, Map<Coordinate, Integer> corners, Flat flat) {
        int[] loop = new int[3];
        for (int i = 0; i < 3; i++) {
            Integer corner = corners.get(triangle[i]);
            if (corner == null) {
                throw new ShapeException("A face that is not plane could not be split into triangles.");
            }
            loop[i] = corner;
        }
        return flat.area(xyz, loop) < 0 ? Loops.turned(loop) : loop;
    }

    /** For outlines that cross themselves there is no right answer; a fan keeps their corners and their edges. */
    private static List<int[][]> fan(int[] loop) {
        List<int[][]> result = new ArrayList<>();
        for (int i = 1; i + 1 < loop.length; i++) {
            result.add(new int[][] {{loop[0], loop[i], loop[i + 1]}});
        }
        return result;
    }
}
