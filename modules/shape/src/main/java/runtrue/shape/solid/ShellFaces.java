package runtrue.shape.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.mesh.FacePlane;
import runtrue.shape.mesh.Loops;
import runtrue.shape.mesh.Points;

/** Collects the faces of shells: polygons, and edge loops where surface and edges are flat and straight. */
final class ShellFaces {
    private final AffineTransformMatrix3D frame;
    private final boolean mirrored;
    private final FaceBudget budget;
    private final Points points = new Points();
    private final Map<Integer, Integer> numbers = new HashMap<>();
    private final List<int[][]> faces = new ArrayList<>();

    ShellFaces(AffineTransformMatrix3D frame, FaceBudget budget) {
        this.frame = frame;
        this.mirrored = frame.determinant() < 0;
        this.budget = budget;
    }

    double[] xyz() {
        return points.toArray();
    }

    List<int[][]> faces() {
        return faces;
    }

    /** Adds the faces of an IfcConnectedFaceSet (open or closed shell). */
    void add(IfcEntity shell) {
        List<IfcEntity> members = shell.refs("CfsFaces");
        budget.take(members.size());
        for (IfcEntity face : members) {
            addFace(face);
        }
    }

    private void addFace(IfcEntity face) {
        if (face.has("FaceSurface") && !face.ref("FaceSurface").isA("IfcPlane")) {
            throw new ShapeException(
                    "Curved faces are not read yet (" + face.ref("FaceSurface").type() + " of " + face.label()
                            + "); export this element as a faceted body.");
        }
        List<int[]> loops = new ArrayList<>(1);
        for (IfcEntity bound : face.refs("Bounds")) {
            int[] loop = loop(bound.ref("Bound"));
            if (loop.length < 3) {
                continue;
            }
            if (bound.enumeration("Orientation").equals("F") != mirrored) {
                loop = Loops.turned(loop);
            }
            if (bound.type().equals("IfcFaceOuterBound")) {
                loops.add(0, loop);
            } else {
                loops.add(loop);
            }
        }
        if (loops.isEmpty()) {
            return;
        }
        if (loops.size() > 1) {
            largestFirst(loops);
        }
        faces.add(loops.toArray(new int[0][]));
    }

    /** Files are known to mark no bound as the outer one, or the wrong one; the outline is the one of the largest area. */
    private void largestFirst(List<int[]> loops) {
        int best = 0;
        double most = 0;
        for (int i = 0; i < loops.size(); i++) {
            double area = FacePlane.area(points.raw(), new int[][] {loops.get(i)});
            if (area > most) {
                best = i;
                most = area;
            }
        }
        loops.add(0, loops.remove(best));
    }

    private int[] loop(IfcEntity loop) {
        return switch (loop.type()) {
            case "IfcPolyLoop" -> polygon(loop.refs("Polygon"));
            case "IfcEdgeLoop" -> edges(loop);
            default ->
                throw new ShapeException("Loops of type " + loop.type() + " are not read (" + loop.label() + ").");
        };
    }

    private int[] polygon(List<IfcEntity> corners) {
        int[] loop = new int[corners.size()];
        for (int i = 0; i < loop.length; i++) {
            loop[i] = point(corners.get(i));
        }
        return loop;
    }

    private int[] edges(IfcEntity loop) {
        List<IfcEntity> edges = loop.refs("EdgeList");
        int[] corners = new int[edges.size()];
        for (int i = 0; i < corners.length; i++) {
            IfcEntity oriented = edges.get(i);
            IfcEntity edge = oriented.ref("EdgeElement");
            if (edge.has("EdgeGeometry") && !straight(edge.ref("EdgeGeometry"))) {
                throw new ShapeException("Curved edges are not read yet ("
                        + edge.ref("EdgeGeometry").type() + " of " + edge.label()
                        + "); export this element as a faceted body.");
            }
            boolean forward = !oriented.enumeration("Orientation").equals("F");
            corners[i] = point(edge.ref(forward ? "EdgeStart" : "EdgeEnd").ref("VertexGeometry"));
        }
        return corners;
    }

    private static boolean straight(IfcEntity curve) {
        return switch (curve.type()) {
            case "IfcLine" -> true;
            case "IfcPolyline" -> curve.refs("Points").size() == 2;
            case "IfcTrimmedCurve" -> straight(curve.ref("BasisCurve"));
            case "IfcBSplineCurveWithKnots", "IfcRationalBSplineCurveWithKnots" ->
                curve.real("Degree") == 1 && curve.refs("ControlPointsList").size() == 2;
            default -> false;
        };
    }

    private int point(IfcEntity point) {
        Integer known = numbers.get(point.id());
        if (known != null) {
            return known;
        }
        double[] c = point.reals("Coordinates");
        if (c.length != 3) {
            throw new ShapeException("The point " + point.label() + " does not have three coordinates.");
        }
        int number = points.add(
                frame.applyX(c[0], c[1], c[2]), frame.applyY(c[0], c[1], c[2]), frame.applyZ(c[0], c[1], c[2]));
        numbers.put(point.id(), number);
        return number;
    }
}
