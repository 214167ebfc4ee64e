package runtrue.shape.mesh;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import runtrue.shape.Tolerances;

/** Faces as a file gives them made into a mesh: start with {@link #solid}. */
public final class Shells {
    /** A face lost to welding is worth a remark from this area on, in square metres: a square centimetre. */
    private static final double WORTH_A_REMARK = 1e-4;

    private Shells() {}

    /**
     * Welds points, splits faces that are not plane, joins T-junctions, turns closed shells outward, merges coplanar
     * neighbours where they are exactly so; {@link #merged} does the rest.
     *
     * @param xyz three coordinates a point, metres
     * @param faces per face its loops of point numbers: the outline and holes, in any direction; holes are turned against
     *     their outline
     * @param remarks takes sentences on what was changed
     */
    public static Mesh solid(double[] xyz, List<int[][]> faces, Tolerances tolerances, Consumer<String> remarks) {
        int[] first = Welding.firstOf(xyz, tolerances.point());
        List<int[][]> clean = new ArrayList<>(faces.size());
        double lost = 0;
        Planarity planarity = new Planarity(xyz, tolerances);
        for (int[][] face : faces) {
            int[][] welded = welded(face, first);
            if (welded.length == 0) {
                lost += FacePlane.area(xyz, face);
            } else {
                planarity.add(welded, clean);
            }
        }
        if (lost > WORTH_A_REMARK) {
            remarks.accept(String.format(Locale.ROOT, "Faces without width were left out (%.4f m2 as written)", lost));
        }
        planarity.remark(remarks);
        return finished(xyz, clean.toArray(new int[0][][]), tolerances, remarks);
    }

    /**
     * As {@link #solid} for triangles that another engine made: taken apart into the solids that they were written as, so
     * that solids which touch stay closed.
     *
     * @param corners three point numbers a triangle, counter-clockwise seen from outside
     */
    public static List<Mesh> ofTriangles(double[] xyz, int[] corners, Tolerances tolerances, Consumer<String> remarks) {
        List<Mesh> solids = new ArrayList<>();
        for (List<int[][]> run : TriangleRuns.of(xyz, corners, tolerances)) {
            solids.add(solidOfItsOwnPoints(xyz, run, tolerances, remarks));
        }
        return solids;
    }

    /** Each solid carries its points alone: with all of them, a thousand bolts would cost a thousand times a thousand. */
    private static Mesh solidOfItsOwnPoints(
            double[] xyz, List<int[][]> triangles, Tolerances tolerances, Consumer<String> remarks) {
        double[] own = new double[9 * triangles.size()];
        List<int[][]> faces = new ArrayList<>(triangles.size());
        for (int t = 0; t < triangles.size(); t++) {
            for (int k = 0; k < 3; k++) {
                System.arraycopy(xyz, 3 * triangles.get(t)[0][k], own, 9 * t + 3 * k, 3);
            }
            faces.add(new int[][] {{3 * t, 3 * t + 1, 3 * t + 2}});
        }
        return solid(own, faces, tolerances, remarks);
    }

    /** Merges neighbours that are coplanar but for the rounding of coordinates: the last step, after all cuts. */
    public static Mesh merged(Mesh mesh, Tolerances tolerances) {
        double[] xyz = mesh.xyz();
        int[][][] merged = CoplanarMerge.merged(xyz, mesh.faces(), new EdgeMap(mesh.faces()), tolerances, false);
        return new Mesh(xyz, StraightCorners.removed(xyz, merged, tolerances.point()), mesh.closed());
    }

    /** As {@link #solid}, for faces that are plane, welded and free of repeated corners already. */
    @SuppressWarnings("ReferenceEquality") // Junctions hand the same array back when there was nothing to join
    private static Mesh finished(double[] xyz, int[][][] welded, Tolerances tolerances, Consumer<String> remarks) {
        EdgeMap edges = new EdgeMap(welded);
        int[][][] joined = Junctions.joined(xyz, welded, edges, tolerances.point());
        if (joined != welded) {
            edges = new EdgeMap(joined);
        }
        int[][][] oriented = Orientation.outward(xyz, joined, edges);
        remarkTurned(joined, oriented, remarks);
        edges = new EdgeMap(oriented);
        boolean closed = edges.closed();
        int[][][] merged = CoplanarMerge.merged(xyz, oriented, edges, tolerances, true);
        return new Mesh(xyz, StraightCorners.removed(xyz, merged, tolerances.point()), closed);
    }

    /** Only where faces of one body contradict each other: a body that is inside out as a whole may be a mirror image. */
    @SuppressWarnings("ReferenceEquality") // Orientation hands faces that it does not turn back as they are
    private static void remarkTurned(int[][][] given, int[][][] oriented, Consumer<String> remarks) {
        int turned = 0;
        for (int f = 0; f < given.length; f++) {
            turned += given[f] == oriented[f] ? 0 : 1;
        }
        if (turned > 0 && turned < given.length) {
            remarks.accept(turned + " of " + given.length + " faces looked into the body and were turned");
        }
    }

    private static int[][] welded(int[][] face, int[] first) {
        List<int[]> loops = new ArrayList<>(face.length);
        for (int i = 0; i < face.length; i++) {
            int[] loop = new int[face[i].length];
            for (int k = 0; k < loop.length; k++) {
                loop[k] = first[face[i][k]];
            }
            int[] cleaned = Loops.cleaned(loop);
            if (cleaned.length > 2) {
                loops.add(cleaned);
            } else if (i == 0) {
                return new int[0][];
            }
        }
        return loops.toArray(new int[0][]);
    }

    /** Several meshes as one; no face is changed. */
    public static Mesh together(List<Mesh> meshes) {
        if (meshes.size() == 1) {
            return meshes.get(0);
        }
        Points points = new Points();
        List<int[][]> faces = new ArrayList<>();
        boolean closed = true;
        for (Mesh mesh : meshes) {
            int shift = points.size();
            double[] xyz = mesh.xyz();
            for (int i = 0; i < xyz.length; i += 3) {
                points.add(xyz[i], xyz[i + 1], xyz[i + 2]);
            }
            for (int[][] face : mesh.faces()) {
                faces.add(shifted(face, shift));
            }
            closed &= mesh.closed();
        }
        return new Mesh(points.toArray(), faces.toArray(new int[0][][]), closed);
    }

    private static int[][] shifted(int[][] face, int shift) {
        int[][] result = new int[face.length][];
        for (int i = 0; i < face.length; i++) {
            result[i] = new int[face[i].length];
            for (int k = 0; k < result[i].length; k++) {
                result[i][k] = face[i][k] + shift;
            }
        }
        return result;
    }
}
