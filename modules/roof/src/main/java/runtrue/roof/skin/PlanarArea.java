package runtrue.roof.skin;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.Face;

/** Measures of planar rings in space. */
public final class PlanarArea {
    private PlanarArea() {}

    /**
     * Area vector of a closed ring by Newell's formula: its length is the area, its direction the normal of a ring that
     * runs counter-clockwise. The last point need not repeat the first.
     */
    public static Vector3D vector(List<Vector3D> ring) {
        Vector3D sum = Vector3D.ZERO;
        Vector3D first = ring.get(0);
        for (int i = 1; i + 1 < ring.size(); i++) {
            sum = sum.add(ring.get(i).subtract(first).cross(ring.get(i + 1).subtract(first)));
        }
        return sum.multiply(0.5);
    }

    /** Area of a face without its holes, square metres. */
    static double of(Face face) {
        double area = vector(face.outline()).norm();
        for (List<Vector3D> hole : face.holes()) {
            area -= vector(hole).norm();
        }
        return area;
    }

    /**
     * Least distance between two parallel lines in the face's plane that hold the ring between them, metres: the width
     * of a strip, whichever way it lies. One of the lines runs along an edge of the ring's hull, so the edges suffice
     * for convex rings and give an upper bound otherwise.
     */
    static double width(List<Vector3D> ring, Vector3D normal) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ring.size(); i++) {
            Vector3D edge = ring.get((i + 1) % ring.size()).subtract(ring.get(i));
            if (edge.norm() < 1e-6) {
                continue;
            }
            Vector3D side = normal.cross(edge.normalize());
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (Vector3D p : ring) {
                double d = p.dot(side);
                low = Math.min(low, d);
                high = Math.max(high, d);
            }
            least = Math.min(least, high - low);
        }
        return least;
    }
}
