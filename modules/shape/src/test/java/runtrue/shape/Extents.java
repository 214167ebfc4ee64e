package runtrue.shape;

import java.util.DoubleSummaryStatistics;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** How far a body reaches along its axes. */
final class Extents {
    private Extents() {}

    /** Least and greatest coordinate along an axis: 0 for x, 1 for y, 2 for z. */
    static double[] of(Shape.Body body, int axis) {
        DoubleSummaryStatistics all = body.faces().stream()
                .flatMap(face -> face.outline().stream())
                .mapToDouble(p -> coordinate(p, axis))
                .summaryStatistics();
        return new double[] {all.getMin(), all.getMax()};
    }

    private static double coordinate(Vector3D p, int axis) {
        return axis == 0 ? p.getX() : axis == 1 ? p.getY() : p.getZ();
    }
}
