package runtrue.shape.curve;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;

/** Points and directions in space; what is given in a plane lies at z = 0. */
final class Places {
    private Places() {}

    static Vector3D of(IfcEntity point) {
        double[] c = point.reals("Coordinates");
        if (c.length < 2) {
            throw new ShapeException("The point " + point.label() + " has fewer than two coordinates.");
        }
        return Vector3D.of(c[0], c[1], c.length > 2 ? c[2] : 0);
    }

    static List<Vector3D> of(List<IfcEntity> points) {
        List<Vector3D> places = new ArrayList<>(points.size());
        for (IfcEntity point : points) {
            places.add(of(point));
        }
        return places;
    }

    /** A direction of unit length. */
    static Vector3D direction(IfcEntity direction) {
        double[] r = direction.reals("DirectionRatios");
        double norm = r.length < 2 ? 0 : Math.hypot(Math.hypot(r[0], r[1]), r.length > 2 ? r[2] : 0);
        if (!(norm > 0) || Double.isInfinite(norm)) {
            throw new ShapeException("The direction " + direction.label() + " has no length.");
        }
        return Vector3D.of(r[0] / norm, r[1] / norm, r.length > 2 ? r[2] / norm : 0);
    }
}
