package runtrue.shape.surface;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.Conic;
import runtrue.shape.curve.Curve;
import runtrue.shape.curve.CurveReader;
import runtrue.shape.curve.Fineness;
import runtrue.shape.curve.Line;

/** Curved surfaces of files: start with {@link #read}. */
public final class SurfaceReader {
    private static final int DEEPEST = 20;

    private final Fineness fineness;

    public SurfaceReader(Fineness fineness) {
        this.fineness = fineness;
    }

    /**
     * A surface with all that it trims itself by left out: the loops of a face do that.
     *
     * @throws ShapeException when its kind is not read or its numbers make no surface
     */
    public Surface read(IfcEntity surface) {
        return switch (surface.type()) {
            case "IfcCylindricalSurface" -> {
                double radius = size(surface, "Radius");
                Curve side = new Line(Vector3D.of(radius, 0, 0), Vector3D.Unit.PLUS_Z);
                yield endless(placed(surface), side);
            }
            case "IfcSphericalSurface" -> {
                double radius = size(surface, "Radius");
                Curve meridian = circle(0, radius);
                yield new Turned(placed(surface), meridian, -0.5 * Math.PI, 0.5 * Math.PI, tiny());
            }
            case "IfcToroidalSurface" -> torus(surface);
            case "IfcSurfaceOfLinearExtrusion" -> extruded(surface);
            case "IfcSurfaceOfRevolution" -> turned(surface);
            case "IfcBSplineSurfaceWithKnots", "IfcRationalBSplineSurfaceWithKnots" ->
                new SplineReader(surface, tiny()).read();
            default ->
                throw new ShapeException("Surfaces of type " + surface.type() + " are not read (" + surface.label()
                        + "); export this element as a faceted body.");
        };
    }

    /** The surface behind those that only trim it. */
    public static IfcEntity basis(IfcEntity surface) {
        IfcEntity basis = surface;
        for (int i = 0; basis.has("BasisSurface"); i++) {
            if (i > DEEPEST) {
                throw new ShapeException("The surface " + surface.label() + " refers to itself.");
            }
            basis = basis.ref("BasisSurface");
        }
        return basis;
    }

    private double tiny() {
        return FaceNet.SAME_POINTS * fineness.point();
    }

    private static double size(IfcEntity surface, String dimension) {
        double value = surface.real(dimension);
        if (!(value > 0)) {
            throw new ShapeException("The " + dimension + " of " + surface.label() + " is not positive.");
        }
        return value;
    }

    private static AffineTransformMatrix3D placed(IfcEntity surface) {
        return surface.has("Position")
                ? surface.model().transform(surface.ref("Position"))
                : AffineTransformMatrix3D.identity();
    }

    private static Curve circle(double out, double radius) {
        return new Conic(Vector3D.of(out, 0, 0), Vector3D.of(radius, 0, 0), Vector3D.of(0, 0, radius));
    }

    private Surface endless(AffineTransformMatrix3D axes, Curve profile) {
        return new Turned(axes, profile, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, tiny());
    }

    private Surface torus(IfcEntity surface) {
        double major = size(surface, "MajorRadius");
        double minor = size(surface, "MinorRadius");
        if (minor >= major) {
            throw new ShapeException("The torus " + surface.label()
                    + " runs through its own axis; export this element as a faceted body.");
        }
        return endless(placed(surface), circle(major, minor));
    }

    private Chain profile(IfcEntity surface) {
        IfcEntity profile = surface.ref("SweptCurve");
        for (String curve : List.of("Curve", "OuterCurve")) {
            if (profile.has(curve)) {
                return new CurveReader(fineness).read(profile.ref(curve));
            }
        }
        throw new ShapeException("The surface " + surface.label() + " has a profile of type " + profile.type()
                + ", which is no curve; export this element as a faceted body.");
    }

    private Surface extruded(IfcEntity surface) {
        double[] d = surface.ref("ExtrudedDirection").reals("DirectionRatios");
        Vector3D direction = d.length < 3 ? Vector3D.ZERO : Vector3D.of(d[0], d[1], d[2]);
        if (!(Math.abs(direction.getZ()) > 1e-6 * direction.norm())) {
            throw new ShapeException("The direction of " + surface.label() + " lies within the plane of its profile.");
        }
        Along profile = new Along(profile(surface), AffineTransformMatrix3D.identity(), tiny());
        return new Extruded(placed(surface), profile, direction.normalize());
    }

    private Surface turned(IfcEntity surface) {
        IfcEntity axis = surface.ref("AxisPosition");
        double[] p = axis.ref("Location").reals("Coordinates");
        double[] d = axis.has("Axis") ? axis.ref("Axis").reals("DirectionRatios") : new double[] {0, 0, 1};
        Vector3D location = Vector3D.of(p[0], p[1], p.length > 2 ? p[2] : 0);
        Vector3D z = Vector3D.of(d[0], d[1], d.length > 2 ? d[2] : 0).normalize();
        Chain chain = profile(surface);
        Vector3D out = Vector3D.ZERO;
        List<Vector3D> points = chain.points(fineness);
        for (Vector3D point : points) {
            Vector3D off = point.subtract(location);
            Vector3D square = off.subtract(z.multiply(off.dot(z)));
            out = square.normSq() > out.normSq() ? square : out;
        }
        if (!(out.norm() > tiny())) {
            throw new ShapeException(
                    "The profile of " + surface.label() + " lies on the axis that it is turned about.");
        }
        Vector3D x = out.normalize();
        Vector3D y = z.cross(x);
        for (Vector3D point : points) {
            Vector3D off = point.subtract(location);
            if (Math.abs(off.dot(y)) > tiny() || off.dot(x) < -tiny()) {
                throw new ShapeException("The profile of " + surface.label() + " does not lie in one half plane at the"
                        + " axis that it is turned about; export this element as a faceted body.");
            }
        }
        AffineTransformMatrix3D half = AffineTransformMatrix3D.fromColumnVectors(x, y, z, location);
        Along along = new Along(chain, half.inverse(), tiny());
        AffineTransformMatrix3D axes = placed(surface).multiply(half);
        return along.period() > 0 ? endless(axes, along) : new Turned(axes, along, 0, along.span(), tiny());
    }
}
