package runtrue.shape.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Fineness;
import runtrue.shape.mesh.FacePlane;
import runtrue.shape.mesh.Loops;
import runtrue.shape.mesh.Points;
import runtrue.shape.surface.FaceNet;
import runtrue.shape.surface.Surface;
import runtrue.shape.surface.SurfaceReader;

/** Collects the faces of shells: polygons as they are, curved edges as chords, faces on curved surfaces as triangles. */
final class ShellFaces {
    private final AffineTransformMatrix3D frame;
    private final boolean mirrored;
    private final FaceBudget budget;
    private final Points points = new Points();
    private final Map<Integer, Integer> numbers = new HashMap<>();
    private final List<int[][]> faces = new ArrayList<>();
    private final Map<Integer, Surface> surfaces = new HashMap<>();
    private final Fineness fineness;
    private final Edges edges;
    private final HolesApart holes = new HolesApart();

    /**
     * @param fineness for curved edges and faces, in file units
     */
    ShellFaces(AffineTransformMatrix3D frame, Fineness fineness, FaceBudget budget) {
        this.frame = frame;
        this.fineness = fineness;
        this.edges = new Edges(fineness, budget, this::point, this::add);
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
        holes.join(points.raw(), faces);
    }

    private void addFace(IfcEntity face) {
        IfcEntity surface = face.has("FaceSurface") ? SurfaceReader.basis(face.ref("FaceSurface")) : null;
        if (surface == null || surface.isA("IfcPlane")) {
            addPolygon(face);
        } else {
            addCurved(face, surface);
        }
    }

    private void addPolygon(IfcEntity face) {
        List<int[]> loops = loops(face, mirrored);
        if (loops.isEmpty()) {
            return;
        }
        if (loops.size() > 1) {
            largestFirst(loops);
        }
        if (HolesApart.isHole(face)) {
            holes.hole(face, loops);
            return;
        }
        holes.outline(face, faces.size());
        faces.add(loops.toArray(new int[0][]));
    }

    private void addCurved(IfcEntity face, IfcEntity surface) {
        boolean sameSense = !face.enumeration("SameSense").equals("F");
        try {
            Surface curved = surfaces.computeIfAbsent(surface.id(), id -> new SurfaceReader(fineness).read(surface));
            List<int[]> loops = loops(face, !sameSense);
            if (loops.isEmpty() && face.refs("Bounds").stream().noneMatch(ShellFaces::isVertex)) {
                return;
            }
            faces.addAll(new FaceNet(points, frame, fineness, budget::take).faces(curved, loops, sameSense));
        } catch (ShapeException e) {
            throw new ShapeException("The curved face " + face.label() + " on " + surface.label() + " was not read ("
                    + e.getMessage() + "); export this element as a faceted body.");
        }
    }

    private static boolean isVertex(IfcEntity bound) {
        return bound.ref("Bound").isA("IfcVertexLoop");
    }

    /** The loops of a face that have an area, the outer bound first; walked the other way when turned. */
    private List<int[]> loops(IfcEntity face, boolean turned) {
        List<int[]> loops = new ArrayList<>(1);
        for (IfcEntity bound : face.refs("Bounds")) {
            int[] loop = loop(bound.ref("Bound"));
            if (loop.length < 3) {
                continue;
            }
            if (bound.enumeration("Orientation").equals("F") != turned) {
                loop = Loops.turned(loop);
            }
            if (bound.type().equals("IfcFaceOuterBound")) {
                loops.add(0, loop);
            } else {
                loops.add(loop);
            }
        }
        return loops;
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
            case "IfcEdgeLoop" -> edges.loop(loop);
            case "IfcVertexLoop" -> new int[0];
            default ->
                throw new ShapeException("Loops of type " + loop.type() + " are not read (" + loop.label()
                        + "); export this element as a faceted body.");
        };
    }

    private int[] polygon(List<IfcEntity> corners) {
        int[] loop = new int[corners.size()];
        for (int i = 0; i < loop.length; i++) {
            loop[i] = point(corners.get(i));
        }
        return loop;
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
        int number = add(c[0], c[1], c[2]);
        numbers.put(point.id(), number);
        return number;
    }

    private int add(double x, double y, double z) {
        return points.add(frame.applyX(x, y, z), frame.applyY(x, y, z), frame.applyZ(x, y, z));
    }

    private int add(Vector3D place) {
        return add(place.getX(), place.getY(), place.getZ());
    }
}
