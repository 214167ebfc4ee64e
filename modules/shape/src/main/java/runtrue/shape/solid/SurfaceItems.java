package runtrue.shape.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.Tolerances;
import runtrue.shape.curve.CurveReader;
import runtrue.shape.curve.Fineness;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.mesh.Points;
import runtrue.shape.mesh.Shells;
import runtrue.shape.surface.FaceNet;
import runtrue.shape.surface.Surface;
import runtrue.shape.surface.SurfaceReader;

/** Surfaces that stand as items by themselves and end by themselves, or between parameters. */
final class SurfaceItems {
    private final Tolerances tolerances;
    private final Consumer<String> remarks;
    private final FaceBudget budget;
    private final Fineness fineness;

    SurfaceItems(Tolerances tolerances, Consumer<String> remarks, FaceBudget budget, Fineness fineness) {
        this.tolerances = tolerances;
        this.remarks = remarks;
        this.budget = budget;
        this.fineness = fineness;
    }

    static boolean reads(IfcEntity item) {
        return item.isA("IfcBSplineSurface")
                || item.isA("IfcSurfaceOfLinearExtrusion")
                || item.isA("IfcSurfaceOfRevolution")
                || item.isA("IfcRectangularTrimmedSurface")
                || item.isA("IfcCurveBoundedPlane")
                || item.isA("IfcCurveBoundedSurface");
    }

    private static boolean withinCurves(IfcEntity item) {
        return item.isA("IfcCurveBoundedPlane") || item.isA("IfcCurveBoundedSurface");
    }

    Mesh read(IfcEntity item, AffineTransformMatrix3D frame) {
        Points points = new Points();
        List<int[][]> faces = new ArrayList<>();
        IfcEntity basis = item.has("BasisSurface") ? item.ref("BasisSurface") : item;
        try {
            if (basis.isA("IfcPlane")) {
                faces.add(
                        withinCurves(item)
                                ? new BoundedPlane(item, fineness).face(frame, points)
                                : rectangle(basis, trims(item, 1, 1), frame, points));
            } else {
                FaceNet net = new FaceNet(points, frame, fineness, budget::take);
                Surface surface = new SurfaceReader(fineness).read(basis);
                faces.addAll(
                        withinCurves(item)
                                ? net.faces(surface, loops(item, frame, points), true)
                                : net.whole(surface, window(item, basis)));
            }
        } catch (ShapeException e) {
            throw new ShapeException("The surface " + item.label() + " was not read (" + e.getMessage()
                    + "); export this element as a faceted body.");
        }
        return Shells.solid(points.toArray(), faces, tolerances, remarks);
    }

    /** Boundaries in space on a curved surface, the face to their left. */
    private List<int[]> loops(IfcEntity item, AffineTransformMatrix3D frame, Points points) {
        if (item.enumeration("ImplicitOuter").equals("T")) {
            throw new ShapeException("its outer bound is implied, not drawn");
        }
        List<int[]> loops = new ArrayList<>();
        for (IfcEntity curve : item.refs("Boundaries")) {
            List<Vector3D> corners = apart(new CurveReader(fineness).read(curve).points(fineness));
            int last = corners.size() - 1;
            if (last < 3 || !same(corners.get(last), corners.get(0))) {
                throw new ShapeException("its boundary " + curve.label() + " does not close");
            }
            int[] loop = new int[last];
            for (int i = 0; i < last; i++) {
                Vector3D p = frame.apply(corners.get(i));
                loop[i] = points.add(p.getX(), p.getY(), p.getZ());
            }
            loops.add(loop);
        }
        if (loops.isEmpty()) {
            throw new ShapeException("no curve bounds it");
        }
        return loops;
    }

    /** Segments of a boundary meet in ends that are rounded each by itself: of two such ends one stays. */
    private List<Vector3D> apart(List<Vector3D> corners) {
        List<Vector3D> apart = new ArrayList<>(corners.size());
        for (Vector3D corner : corners) {
            if (apart.isEmpty() || !same(apart.get(apart.size() - 1), corner)) {
                apart.add(corner);
            }
        }
        return apart;
    }

    private boolean same(Vector3D a, Vector3D b) {
        return a.distance(b) <= FaceNet.SAME_POINTS * fineness.point();
    }

    private static double[] window(IfcEntity item, IfcEntity basis) {
        double angle = item.model().units().planeAngle();
        if (basis != item) {
            return switch (basis.type()) {
                case "IfcCylindricalSurface" -> trims(item, angle, 1);
                case "IfcSphericalSurface", "IfcToroidalSurface" -> trims(item, angle, angle);
                case "IfcBSplineSurfaceWithKnots", "IfcRationalBSplineSurfaceWithKnots" -> trims(item, 1, 1);
                default -> throw new ShapeException("it trims a surface of type " + basis.type());
            };
        }
        boolean drawn = basis.isA("IfcSurfaceOfLinearExtrusion");
        double depth = drawn ? item.real("Depth") : Double.NaN;
        return new double[] {Double.NaN, Double.NaN, drawn ? 0 : Double.NaN, depth};
    }

    private static double[] trims(IfcEntity item, double unitU, double unitV) {
        double[] u = {unitU * item.real("U1"), unitU * item.real("U2")};
        double[] v = {unitV * item.real("V1"), unitV * item.real("V2")};
        return new double[] {Math.min(u[0], u[1]), Math.max(u[0], u[1]), Math.min(v[0], v[1]), Math.max(v[0], v[1])};
    }

    private static int[][] rectangle(IfcEntity plane, double[] window, AffineTransformMatrix3D frame, Points points) {
        AffineTransformMatrix3D axes = frame.multiply(plane.model().transform(plane.ref("Position")));
        int[] loop = new int[4];
        for (int i = 0; i < 4; i++) {
            double u = window[i == 1 || i == 2 ? 1 : 0];
            double v = window[i < 2 ? 2 : 3];
            Vector3D p = axes.apply(Vector3D.of(u, v, 0));
            loop[i] = points.add(p.getX(), p.getY(), p.getZ());
        }
        return new int[][] {loop};
    }
}
