package runtrue.shape.sweep;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.Tolerances;
import runtrue.shape.mesh.FacePlane;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.mesh.Shells;

/** Sections of like corners joined to a closed body: quadrangles where they are plane, else triangles. */
final class Loft {
    private final Workshop workshop;
    private final int[] rings;
    private final int corners;
    private final List<double[]> sections = new ArrayList<>();

    /**
     * @param rings number of corners of the outline and of each void
     */
    Loft(Workshop workshop, int[] rings) {
        this.workshop = workshop;
        this.rings = rings;
        int sum = 0;
        for (int ring : rings) {
            sum += ring;
        }
        this.corners = sum;
    }

    /** Adds a section, its corners ring after ring: the outline counter-clockwise seen against the way, voids clockwise. */
    void add(List<Vector3D> section, AffineTransformMatrix3D toMetres) {
        workshop.take(2L * corners);
        double[] xyz = new double[3 * corners];
        for (int i = 0; i < corners; i++) {
            Vector3D p = toMetres.apply(section.get(i));
            xyz[3 * i] = p.getX();
            xyz[3 * i + 1] = p.getY();
            xyz[3 * i + 2] = p.getZ();
        }
        sections.add(xyz);
    }

    /**
     * The body.
     *
     * @param around whether the last section is joined to the first instead of closing both with a face
     */
    Mesh mesh(boolean around) {
        int n = sections.size();
        double[] xyz = new double[3 * corners * n];
        for (int s = 0; s < n; s++) {
            System.arraycopy(sections.get(s), 0, xyz, 3 * corners * s, 3 * corners);
        }
        List<int[][]> faces = new ArrayList<>();
        if (!around) {
            faces.add(end(0, true));
            faces.add(end(n - 1, false));
        }
        for (int s = 0; s < (around ? n : n - 1); s++) {
            sides(xyz, corners * s, corners * ((s + 1) % n), faces);
        }
        return Shells.solid(xyz, faces, workshop.tolerances(), workshop.remarks());
    }

    private int[][] end(int section, boolean backward) {
        int[][] loops = new int[rings.length][];
        int first = corners * section;
        for (int r = 0; r < rings.length; r++) {
            loops[r] = new int[rings[r]];
            for (int i = 0; i < rings[r]; i++) {
                loops[r][i] = first + (backward ? rings[r] - 1 - i : i);
            }
            first += rings[r];
        }
        return loops;
    }

    private void sides(double[] xyz, int from, int to, List<int[][]> faces) {
        int first = 0;
        for (int ring : rings) {
            for (int i = 0; i < ring; i++) {
                int a = first + i;
                int b = first + (i + 1) % ring;
                side(xyz, new int[] {from + a, from + b, to + b, to + a}, faces);
            }
            first += ring;
        }
    }

    private void side(double[] xyz, int[] quad, List<int[][]> faces) {
        FacePlane plane = FacePlane.of(xyz, quad);
        Tolerances tolerances = workshop.tolerances();
        if (!plane.degenerate() && plane.deviation(xyz, quad) <= tolerances.point()) {
            faces.add(new int[][] {quad});
            return;
        }
        boolean other = distance(xyz, quad[1], quad[3]) < distance(xyz, quad[0], quad[2]);
        int[] q = other ? new int[] {quad[1], quad[2], quad[3], quad[0]} : quad;
        faces.add(new int[][] {{q[0], q[1], q[2]}});
        faces.add(new int[][] {{q[0], q[2], q[3]}});
    }

    private static double distance(double[] xyz, int a, int b) {
        double x = xyz[3 * a] - xyz[3 * b];
        double y = xyz[3 * a + 1] - xyz[3 * b + 1];
        double z = xyz[3 * a + 2] - xyz[3 * b + 2];
        return x * x + y * y + z * z;
    }
}
