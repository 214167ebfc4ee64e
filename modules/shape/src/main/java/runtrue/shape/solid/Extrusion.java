package runtrue.shape.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.ShapeException;
import runtrue.shape.Sweep;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.Ring;

/** Profiles swept along a straight line, square to their plane or not. */
public final class Extrusion {
    /** A sweep flatter than this sine against the profile's plane encloses nothing worth reading. */
    private static final double LEAST_SINE = 1e-6;

    private Extrusion() {}

    /**
     * The closed mesh of an extrusion with its faces outward.
     *
     * @param placement from the profile's axes to those of the result; may scale and mirror
     * @param path the sweep in the profile's axes: direction times depth
     */
    public static Solid of(Profile profile, AffineTransformMatrix3D placement, Vector3D path) {
        if (!(Math.abs(path.getZ()) > LEAST_SINE * path.norm())) {
            throw new ShapeException("The extrusion runs within the plane of its profile, or has no length.");
        }
        List<Ring> rings = new ArrayList<>();
        rings.add(profile.outer());
        rings.addAll(profile.voids());
        int corners = 0;
        for (Ring ring : rings) {
            corners += ring.size();
        }
        double[] xyz = new double[6 * corners];
        boolean turned = path.getZ() < 0 != placement.determinant() < 0;
        int[][][] faces = new int[corners + 2][][];
        int[][] start = new int[rings.size()][];
        int[][] end = new int[rings.size()][];
        int n = 0;
        int f = 2;
        for (int r = 0; r < start.length; r++) {
            Ring ring = rings.get(r);
            int size = ring.size();
            start[r] = new int[size];
            end[r] = new int[size];
            for (int i = 0; i < size; i++) {
                put(xyz, n + i, placement, ring.x(i), ring.y(i), 0);
                put(xyz, corners + n + i, placement, ring.x(i) + path.getX(), ring.y(i) + path.getY(), path.getZ());
                start[r][i] = n + size - 1 - i;
                end[r][i] = corners + n + i;
                int next = n + (i + 1) % size;
                faces[f++] = new int[][] {{n + i, next, corners + next, corners + n + i}};
            }
            n += size;
        }
        faces[0] = start;
        faces[1] = end;
        Mesh mesh = new Mesh(xyz, faces, true);
        Sweep sweep = new Sweep(profile.name(), section(xyz, profile.outer().size()), placement.applyVector(path));
        return new Solid(turned ? mesh.inverted() : mesh, Optional.of(sweep));
    }

    private static void put(double[] xyz, int p, AffineTransformMatrix3D placement, double x, double y, double z) {
        xyz[3 * p] = placement.applyX(x, y, z);
        xyz[3 * p + 1] = placement.applyY(x, y, z);
        xyz[3 * p + 2] = placement.applyZ(x, y, z);
    }

    private static List<Vector3D> section(double[] xyz, int corners) {
        List<Vector3D> section = new ArrayList<>(corners);
        for (int i = 0; i < corners; i++) {
            section.add(Vector3D.of(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]));
        }
        return section;
    }
}
