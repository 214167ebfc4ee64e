package runtrue.shape.solid;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.Tolerances;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.mesh.Shells;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.Ring;

/** Simple bodies for tests, in metres. */
public final class Bodies {
    public static final Tolerances TOLERANCES = Tolerances.standard();

    private Bodies() {}

    /** An upright prism from z0 to z1 over a ring of x and y in turn. */
    public static Mesh prism(double z0, double z1, double... xy) {
        return Extrusion.of(profile(xy), at(0, 0, z0), Vector3D.of(0, 0, z1 - z0))
                .mesh();
    }

    public static Mesh box(double x0, double y0, double z0, double x1, double y1, double z1) {
        return prism(z0, z1, x0, y0, x1, y0, x1, y1, x0, y1);
    }

    public static Profile profile(double... xy) {
        return new Profile("test", Ring.of(xy, 0), List.of());
    }

    public static AffineTransformMatrix3D at(double x, double y, double z) {
        return AffineTransformMatrix3D.createTranslation(Vector3D.of(x, y, z));
    }

    /** Every triangle of every face with corners of its own, as a file without shared points gives it. */
    public static List<double[][]> triangles(Mesh mesh) {
        List<double[][]> result = new ArrayList<>();
        for (int[][] face : mesh.faces()) {
            int[] loop = face[0];
            for (int i = 1; i + 1 < loop.length; i++) {
                result.add(new double[][] {point(mesh, loop[0]), point(mesh, loop[i]), point(mesh, loop[i + 1])});
            }
        }
        return result;
    }

    public static double[] point(Mesh mesh, int p) {
        return new double[] {mesh.xyz()[3 * p], mesh.xyz()[3 * p + 1], mesh.xyz()[3 * p + 2]};
    }

    /** The mesh that triangles make; whatever is remarked goes to the list. */
    public static Mesh welded(List<double[][]> triangles, List<String> remarks) {
        double[] xyz = new double[9 * triangles.size()];
        List<int[][]> faces = new ArrayList<>();
        for (int t = 0; t < triangles.size(); t++) {
            for (int i = 0; i < 3; i++) {
                System.arraycopy(triangles.get(t)[i], 0, xyz, 9 * t + 3 * i, 3);
            }
            faces.add(new int[][] {{3 * t, 3 * t + 1, 3 * t + 2}});
        }
        return Shells.solid(xyz, faces, TOLERANCES, remarks::add);
    }
}
