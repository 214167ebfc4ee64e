package runtrue.shape.sweep;

import java.util.List;
import java.util.function.UnaryOperator;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.CurveReader;
import runtrue.shape.curve.Fineness;
import runtrue.shape.curve.Piece;

/** The direction that the x axis of a swept profile keeps to: a fixed one, or the normal of the reference surface. */
final class ReferenceDirections {
    private ReferenceDirections() {}

    static UnaryOperator<Vector3D> of(IfcEntity item, Fineness fineness) {
        if (item.has("FixedReference")) {
            Vector3D fixed = direction(item.ref("FixedReference"));
            return place -> fixed;
        }
        IfcEntity surface = item.ref("ReferenceSurface");
        return switch (surface.type()) {
            case "IfcPlane" -> {
                Vector3D normal = placement(surface).applyVector(Vector3D.Unit.PLUS_Z);
                yield place -> normal;
            }
            case "IfcCylindricalSurface" -> {
                AffineTransformMatrix3D axes = placement(surface);
                AffineTransformMatrix3D back = axes.inverse();
                yield place -> {
                    Vector3D own = back.apply(place);
                    return axes.applyVector(Vector3D.of(own.getX(), own.getY(), 0));
                };
            }
            case "IfcSurfaceOfLinearExtrusion" -> extruded(surface, fineness);
            default ->
                throw new ShapeException("Sweeps along surfaces of type " + surface.type() + " are not read ("
                        + item.label() + "); export this element as a faceted body.");
        };
    }

    private static AffineTransformMatrix3D placement(IfcEntity surface) {
        return surface.has("Position")
                ? surface.model().transform(surface.ref("Position"))
                : AffineTransformMatrix3D.identity();
    }

    /** The normal of an extruded surface: direction of the swept curve times that of the extrusion. */
    private static UnaryOperator<Vector3D> extruded(IfcEntity surface, Fineness fineness) {
        AffineTransformMatrix3D axes = placement(surface);
        AffineTransformMatrix3D back = axes.inverse();
        Vector3D out = direction(surface.ref("ExtrudedDirection"));
        if (!(Math.abs(out.getZ()) > 1e-6)) {
            throw new ShapeException("The surface " + surface.label() + " is extruded within its own plane.");
        }
        Chain curve = new CurveReader(fineness).read(surface.ref("SweptCurve").ref("Curve"));
        return place -> {
            Vector3D own = back.apply(place);
            Vector3D below = own.subtract(out.multiply(own.getZ() / out.getZ()));
            return axes.applyVector(tangent(curve, below).cross(out));
        };
    }

    private static Vector3D tangent(Chain curve, Vector3D place) {
        double at = curve.nearest(place);
        double step = 1e-6 * curve.span();
        List<Piece> around = curve.part(Math.max(0, at - step), Math.min(curve.span(), at + step))
                .pieces();
        Piece piece = around.get(0);
        return piece.to().subtract(piece.from()).normalize();
    }

    private static Vector3D direction(IfcEntity direction) {
        double[] r = direction.reals("DirectionRatios");
        Vector3D given = r.length == 3 ? Vector3D.of(r[0], r[1], r[2]) : Vector3D.ZERO;
        if (!(given.norm() > 0) || Double.isInfinite(given.norm())) {
            throw new ShapeException("The direction " + direction.label() + " has no length.");
        }
        return given.normalize();
    }
}
