package runtrue.roof.edge;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.NoninvertibleTransformationException;
import runtrue.roof.PlaneFrame;
import runtrue.roof.RoofPlane;
import runtrue.roof.curved.Development;
import runtrue.roof.plane.Outlines;

/** Between a plane's u, v and the plan's x, y: an affine map, exact for any pitch
 * below upright; along the arc for curved planes. */
final class PlanViews {
    private PlanViews() {}

    /** The plane's outline without penetrations, seen from above. */
    static Polygon plan(RoofPlane plane) {
        if (plane.curve().isPresent()) {
            return Development.plan(
                    Outlines.shell(plane.outline()), plane.curve().get());
        }
        return (Polygon) toPlan(plane.frame()).transform(Outlines.shell(plane.outline()));
    }

    /** A region of the plan as it lies on the plane. */
    static Geometry onPlane(Geometry plan, RoofPlane plane) {
        if (plane.curve().isPresent()) {
            return Development.onCurve(plan, plane.curve().get());
        }
        try {
            return toPlan(plane.frame()).getInverse().transform(plan);
        } catch (NoninvertibleTransformationException e) {
            throw new IllegalStateException("an upright plane is no roof: " + plane.id(), e);
        }
    }

    /** z of the plane, or of its extension, above a point of the plan; metres, moved by the drop origin. */
    static double height(RoofPlane plane, Coordinate at) {
        if (plane.curve().isPresent()) {
            Coordinate on = plane.curve().get().below(at.x, at.y);
            return plane.at(on.x, on.y).getZ();
        }
        Vector3D n = plane.frame().normal();
        Vector3D p = plane.frame().origin();
        return p.getZ() - (n.getX() * (at.x - p.getX()) + n.getY() * (at.y - p.getY())) / n.getZ();
    }

    private static AffineTransformation toPlan(PlaneFrame f) {
        return new AffineTransformation(
                f.across().getX(),
                f.up().getX(),
                f.origin().getX(),
                f.across().getY(),
                f.up().getY(),
                f.origin().getY());
    }
}
