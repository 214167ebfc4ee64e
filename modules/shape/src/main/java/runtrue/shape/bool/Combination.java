package runtrue.shape.bool;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import runtrue.shape.ShapeException;
import runtrue.shape.Tolerances;
import runtrue.shape.mesh.Box;
import runtrue.shape.mesh.FacePlane;
import runtrue.shape.mesh.Loops;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.mesh.Points;
import runtrue.shape.mesh.Shells;

/**
 * Difference, union and intersection of two closed meshes.
 *
 * <p>A face of one solid survives where the other solid is absent (or present) at it: that is, the face less (or within)
 * the other solid's section by the face's plane. So each face costs one {@link PlaneCut#section} and at most two
 * overlays in its plane; no face is ever cut into convex pieces, and corners that survive keep their coordinates.
 *
 * <p>Faces in a common plane are told apart by taking the section a hair to one side. For A's faces it is the side where
 * the result's material is asked for; B's faces count only where A's material is on both sides (or, for a union, on
 * neither), so that a shared face is taken once, from A.
 */
public final class Combination {
    /** What the result holds of A and B. */
    public enum Kind {
        DIFFERENCE,
        UNION,
        INTERSECTION
    }

    /** Faces near the other solid times the other's faces, above which nothing is tried: some seconds of work. */
    private static final long MOST_PAIRS = 60_000_000L;

    private final Kind kind;
    private final Mesh a;
    private final Mesh b;
    private final double tolerance;
    private final Points points = new Points(256);
    private final List<int[][]> faces = new ArrayList<>();
    private boolean changed;

    private Combination(Kind kind, Mesh a, Mesh b, double tolerance) {
        this.kind = kind;
        this.a = a;
        this.b = b;
        this.tolerance = tolerance;
    }

    /**
     * Combines two meshes. Both should be closed; of an open A the faces are cut but no new ones are added.
     *
     * @return the mesh A itself when B does not touch it and nothing changes; without faces when nothing is left
     * @throws ShapeException when B is not closed, or both are too big
     */
    public static Mesh of(Kind kind, Mesh a, Mesh b, Tolerances tolerances, Consumer<String> remarks) {
        if (!b.closed()) {
            throw new ShapeException("The second solid of a boolean operation is not closed.");
        }
        Box boxA = a.box();
        Box boxB = b.box();
        double gap = tolerances.point();
        long pairs = near(a, boxB, gap) * b.faces().length + near(b, boxA, gap) * a.faces().length;
        if (pairs > MOST_PAIRS) {
            throw new ShapeException(
                    "A boolean operation of " + a.faces().length + " faces with " + b.faces().length + " is too big.");
        }
        return new Combination(kind, a, b, gap).run(boxA, boxB, tolerances, remarks);
    }

    private static long near(Mesh mesh, Box box, double gap) {
        long count = 0;
        for (int[][] face : mesh.faces()) {
            count += boxOf(mesh, face).near(box, gap) ? 1 : 0;
        }
        return count;
    }

    private Mesh run(Box boxA, Box boxB, Tolerances tolerances, Consumer<String> remarks) {
        if (!boxA.near(boxB, tolerance)) {
            return switch (kind) {
                case DIFFERENCE -> a;
                case UNION -> Shells.together(List.of(a, b));
                case INTERSECTION -> new Mesh(new double[0], new int[0][][], true);
            };
        }
        for (int f = 0; f < a.faces().length; f++) {
            addOfA(f, boxB);
        }
        if (a.closed()) {
            for (int f = 0; f < b.faces().length; f++) {
                addOfB(f, boxA);
            }
        }
        if (!changed && kind == Kind.DIFFERENCE) {
            return a;
        }
        Mesh result = Shells.solid(points.toArray(), faces, tolerances, remarks);
        if (a.closed() && !result.closed() && result.faces().length > 0) {
            remarks.accept("The solid did not close after a boolean operation ("
                    + kind.name().toLowerCase(Locale.ROOT) + ")");
        }
        return result;
    }

    private void addOfA(int f, Box boxB) {
        int[][] face = a.faces()[f];
        if (!boxOf(a, face).near(boxB, tolerance)) {
            if (kind != Kind.INTERSECTION) {
                add(a.xyz(), face);
            }
            return;
        }
        FacePlane plane = a.plane(f);
        Mesh section = kind == Kind.UNION ? above(b, plane) : below(b, plane);
        Overlay overlay = new Overlay(a.xyz(), plane, tolerance);
        List<int[][]> left = kind == Kind.INTERSECTION
                ? overlay.within(List.<int[][]>of(face), section)
                : overlay.without(List.<int[][]>of(face), section);
        changed |= !isUncut(left, face);
        for (int[][] part : left) {
            add(overlay.xyz(), part);
        }
    }

    /** An overlay hands a face that nothing cuts back as it was, not as a copy. */
    @SuppressWarnings("ReferenceEquality")
    private static boolean isUncut(List<int[][]> left, int[][] face) {
        return left.size() == 1 && left.get(0) == face;
    }

    private void addOfB(int f, Box boxA) {
        int[][] face = b.faces()[f];
        if (!boxOf(b, face).near(boxA, tolerance)) {
            if (kind == Kind.UNION) {
                add(b.xyz(), face);
            }
            return;
        }
        FacePlane plane = b.plane(f);
        Overlay overlay = new Overlay(b.xyz(), plane, tolerance);
        List<int[][]> left = List.<int[][]>of(face);
        left = kind == Kind.UNION ? overlay.without(left, above(a, plane)) : overlay.within(left, above(a, plane));
        if (!left.isEmpty() && touches(a, plane)) {
            Mesh other = below(a, plane);
            left = kind == Kind.UNION ? overlay.without(left, other) : overlay.within(left, other);
        }
        changed |= !left.isEmpty();
        for (int[][] part : left) {
            add(overlay.xyz(), kind == Kind.DIFFERENCE ? Loops.turned(part) : part);
        }
    }

    private Mesh above(Mesh mesh, FacePlane plane) {
        return PlaneCut.section(mesh, plane, tolerance);
    }

    private Mesh below(Mesh mesh, FacePlane plane) {
        return PlaneCut.section(mesh, plane.flipped(), tolerance).inverted();
    }

    private boolean touches(Mesh mesh, FacePlane plane) {
        for (int p = 0; 3 * p < mesh.xyz().length; p++) {
            if (Math.abs(plane.distance(mesh.xyz(), p)) <= tolerance) {
                return true;
            }
        }
        return false;
    }

    private static Box boxOf(Mesh mesh, int[][] face) {
        Box box = new Box();
        box.add(mesh.xyz(), face[0]);
        return box;
    }

    private void add(double[] xyz, int[][] face) {
        int[][] copy = new int[face.length][];
        for (int i = 0; i < face.length; i++) {
            copy[i] = new int[face[i].length];
            for (int k = 0; k < copy[i].length; k++) {
                int p = 3 * face[i][k];
                copy[i][k] = points.add(xyz[p], xyz[p + 1], xyz[p + 2]);
            }
        }
        faces.add(copy);
    }
}
