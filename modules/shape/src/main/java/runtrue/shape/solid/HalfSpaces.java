package runtrue.shape.solid;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.mesh.FacePlane;
import runtrue.shape.profile.OutlineReader;
import runtrue.shape.profile.Ring;

/** IfcHalfSpaceSolid and its kinds. The box of a boxed half-space only says where it is looked at, and is ignored. */
final class HalfSpaces {
    private HalfSpaces() {}

    static HalfSpace read(IfcEntity halfSpace, AffineTransformMatrix3D frame, OutlineReader outlines) {
        IfcEntity surface = halfSpace.ref("BaseSurface");
        if (!surface.isA("IfcPlane")) {
            throw new ShapeException("Half-spaces bounded by " + surface.type() + " are not read (" + halfSpace.label()
                    + "); export this element as a faceted body.");
        }
        FacePlane plane = plane(frame.multiply(surface.model().transform(surface.ref("Position"))));
        boolean normalPointsAway = !halfSpace.enumeration("AgreementFlag").equals("F");
        FacePlane intoMaterial = normalPointsAway ? plane.flipped() : plane;
        if (!halfSpace.isA("IfcPolygonalBoundedHalfSpace")) {
            return new HalfSpace(intoMaterial, Optional.empty());
        }
        Ring ring = outlines.ring(halfSpace.ref("PolygonalBoundary"));
        AffineTransformMatrix3D axes = frame.multiply(halfSpace.model().transform(halfSpace.ref("Position")));
        return new HalfSpace(intoMaterial, Optional.of(new HalfSpace.Bound(ring, axes)));
    }

    /** The plane z = 0 of a placement with its normal to the side of positive z, also where the placement mirrors. */
    private static FacePlane plane(AffineTransformMatrix3D placement) {
        Vector3D x = placement.applyVector(Vector3D.Unit.PLUS_X);
        Vector3D y = placement.applyVector(Vector3D.Unit.PLUS_Y);
        Vector3D n = x.cross(y);
        if (!(n.norm() > 0)) {
            throw new ShapeException("The plane of a half-space is scaled to nothing.");
        }
        n = n.normalize();
        if (n.dot(placement.applyVector(Vector3D.Unit.PLUS_Z)) < 0) {
            n = n.negate();
        }
        Vector3D origin = placement.apply(Vector3D.ZERO);
        return new FacePlane(n.getX(), n.getY(), n.getZ(), n.dot(origin));
    }
}
