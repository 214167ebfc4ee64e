package runtrue.roof.health;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.Face;

/** The box around something along the world's axes, metres; moved as its faces are. */
record Extent(Vector3D low, Vector3D high) {
    static Extent of(List<Face> faces) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Face face : faces) {
            for (Vector3D p : face.outline()) {
                low[0] = Math.min(low[0], p.getX());
                low[1] = Math.min(low[1], p.getY());
                low[2] = Math.min(low[2], p.getZ());
                high[0] = Math.max(high[0], p.getX());
                high[1] = Math.max(high[1], p.getY());
                high[2] = Math.max(high[2], p.getZ());
            }
        }
        return new Extent(Vector3D.of(low), Vector3D.of(high));
    }

    Extent with(Extent other) {
        return new Extent(
                Vector3D.of(
                        Math.min(low.getX(), other.low.getX()),
                        Math.min(low.getY(), other.low.getY()),
                        Math.min(low.getZ(), other.low.getZ())),
                Vector3D.of(
                        Math.max(high.getX(), other.high.getX()),
                        Math.max(high.getY(), other.high.getY()),
                        Math.max(high.getZ(), other.high.getZ())));
    }

    /** The longest of its three sides. */
    double longest() {
        Vector3D sides = high.subtract(low);
        return Math.max(sides.getX(), Math.max(sides.getY(), sides.getZ()));
    }

    boolean same(Extent other, double within) {
        return low.distance(other.low) <= within && high.distance(other.high) <= within;
    }

    boolean reaches(Extent other) {
        return low.getX() <= other.high.getX()
                && other.low.getX() <= high.getX()
                && low.getY() <= other.high.getY()
                && other.low.getY() <= high.getY()
                && low.getZ() <= other.high.getZ()
                && other.low.getZ() <= high.getZ();
    }
}
