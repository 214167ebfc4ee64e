package runtrue.geometryserver;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.Face;
import runtrue.shape.Shape;

/**
 * What a roof is bought and judged by, of one body.
 *
 * @param volume cubic metres; empty for an open body, of which it means nothing
 * @param upwardArea square metres of all faces that look up
 * @param pitch radians, mean over the upward area; 0 when nothing looks up
 */
record Measured(OptionalDouble volume, double upwardArea, double pitch) {
    /** Normals with less than this upward are upright faces: steeper than 87 degrees. */
    private static final double LEAST_UP = 0.05;

    static Measured of(Shape.Body body) {
        double volume = 0;
        double area = 0;
        double pitch = 0;
        Vector3D base = body.faces().get(0).outline().get(0);
        for (Face face : body.faces()) {
            Vector3D vector = areaVector(face);
            double size = vector.norm();
            // A third of height times base, added up over all faces as seen from one point.
            volume += vector.dot(face.outline().get(0).subtract(base)) / 3;
            if (vector.getZ() > LEAST_UP * size) {
                area += size;
                pitch += size * Math.acos(Math.min(1, vector.getZ() / size));
            }
        }
        return new Measured(
                body.closed() ? OptionalDouble.of(volume) : OptionalDouble.empty(), area, area > 0 ? pitch / area : 0);
    }

    /** Along the outward normal, as long as the area. */
    private static Vector3D areaVector(Face face) {
        Vector3D sum = ring(face.outline());
        for (List<Vector3D> hole : face.holes()) {
            sum = sum.add(ring(hole));
        }
        return sum;
    }

    private static Vector3D ring(List<Vector3D> ring) {
        Vector3D sum = Vector3D.ZERO;
        for (int i = 1; i + 1 < ring.size(); i++) {
            sum = sum.add(
                    ring.get(i).subtract(ring.get(0)).cross(ring.get(i + 1).subtract(ring.get(0))));
        }
        return sum.multiply(0.5);
    }
}
