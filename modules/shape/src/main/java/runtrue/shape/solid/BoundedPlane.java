package runtrue.shape.solid;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.CurveReader;
import runtrue.shape.curve.Fineness;
import runtrue.shape.mesh.Points;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.Ring;

/**
 * A part of a plane within curves. Curves of two dimensions lie in the axes of the plane, as the standard has it for
 * IfcCurveBoundedPlane; curves in space lie in the axes of the item, near the plane.
 */
final class BoundedPlane {
    private final IfcEntity item;
    private final Fineness fineness;
    private final AffineTransformMatrix3D axes;

    BoundedPlane(IfcEntity item, Fineness fineness) {
        this.item = item;
        this.fineness = fineness;
        IfcEntity plane = item.ref("BasisSurface");
        this.axes = plane.model().transform(plane.ref("Position"));
    }

    /**
     * The face, looking where the plane does.
     *
     * @param frame from the item's axes to those of the points, which the corners are added to
     */
    int[][] face(AffineTransformMatrix3D frame, Points points) {
        List<Ring> rings = new ArrayList<>();
        for (String bound : List.of("OuterBoundary", "InnerBoundaries", "Boundaries")) {
            for (IfcEntity curve : item.refs(bound)) {
                rings.add(ring(curve));
            }
        }
        if (rings.isEmpty()) {
            throw new ShapeException("no curve bounds it");
        }
        Ring outer = rings.get(0);
        for (Ring ring : rings) {
            outer = Math.abs(ring.signedArea()) > Math.abs(outer.signedArea()) ? ring : outer;
        }
        rings.remove(outer);
        Profile profile = new Profile(item.type(), outer, rings);
        AffineTransformMatrix3D placement = frame.multiply(axes);
        int[][] loops = new int[1 + rings.size()][];
        loops[0] = loop(profile.outer(), placement, points);
        for (int i = 1; i < loops.length; i++) {
            loops[i] = loop(profile.voids().get(i - 1), placement, points);
        }
        return loops;
    }

    private Ring ring(IfcEntity curve) {
        Chain chain = new CurveReader(fineness).read(curve);
        List<Vector3D> corners = chain.points(fineness);
        AffineTransformMatrix3D toPlane = inSpace(curve, 0) ? axes.inverse() : AffineTransformMatrix3D.identity();
        double[] xy = new double[2 * corners.size()];
        for (int i = 0; i < corners.size(); i++) {
            Vector3D own = toPlane.apply(corners.get(i));
            if (Math.abs(own.getZ()) > fineness.chord()) {
                throw new ShapeException("its curve " + curve.label() + " does not lie in its plane");
            }
            xy[2 * i] = own.getX();
            xy[2 * i + 1] = own.getY();
        }
        Ring ring = Ring.of(xy, fineness.point());
        if (ring.size() < 3 || ring.signedArea() == 0) {
            throw new ShapeException("its curve " + curve.label() + " encloses no area");
        }
        return ring;
    }

    private static int[] loop(Ring ring, AffineTransformMatrix3D placement, Points points) {
        int[] loop = new int[ring.size()];
        for (int i = 0; i < loop.length; i++) {
            Vector3D p = placement.apply(Vector3D.of(ring.x(i), ring.y(i), 0));
            loop[i] = points.add(p.getX(), p.getY(), p.getZ());
        }
        return loop;
    }

    /** Whether a curve is given in three dimensions, by the first points or the placement that it leads to. */
    static boolean inSpace(IfcEntity curve, int depth) {
        if (depth > 20) {
            throw new ShapeException("its curve " + curve.label() + " refers to itself");
        }
        if (curve.isA("IfcPcurve") || curve.isA("IfcSurfaceCurve")) {
            return true;
        }
        if (curve.isA("IfcConic")) {
            return curve.ref("Position").isA("IfcAxis2Placement3D");
        }
        for (String part : List.of("Segments", "ParentCurve", "BasisCurve")) {
            List<IfcEntity> parts = curve.isA("IfcIndexedPolyCurve") ? List.of() : curve.refs(part);
            if (!parts.isEmpty()) {
                return inSpace(parts.get(0), depth + 1);
            }
        }
        for (String part : List.of("Points", "ControlPointsList", "Pnt")) {
            List<IfcEntity> parts = curve.refs(part);
            if (!parts.isEmpty()) {
                IfcEntity first = parts.get(0);
                return first.isA("IfcCartesianPointList3D") || first.reals("Coordinates").length == 3;
            }
        }
        return true;
    }
}
