package runtrue.shape.solid;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;

/** Directions of unit length. */
final class Directions {
    private Directions() {}

    static Vector3D of(IfcEntity direction) {
        double[] r = direction.reals("DirectionRatios");
        double length = r.length == 3 ? Math.sqrt(r[0] * r[0] + r[1] * r[1] + r[2] * r[2]) : 0;
        if (!(length > 0) || Double.isInfinite(length)) {
            throw new ShapeException("The direction " + direction.label() + " has no length.");
        }
        return Vector3D.of(r[0] / length, r[1] / length, r[2] / length);
    }
}
