package runtrue.shape.solid;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.Tolerances;
import runtrue.shape.bool.Combination;
import runtrue.shape.bool.PlaneCut;
import runtrue.shape.mesh.FacePlane;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.Ring;

/**
 * All points on one side of a plane, perhaps only within an endless prism.
 *
 * @param intoMaterial the plane, its normal pointing into the half-space
 */
record HalfSpace(FacePlane intoMaterial, Optional<Bound> bound) {
    /**
     * The endless prism over a ring.
     *
     * @param ring in the plane z = 0 of the axes
     * @param axes from the ring's axes and units to those of the meshes; the prism runs along its z
     */
    record Bound(Ring ring, AffineTransformMatrix3D axes) {}

    /** The mesh less the half-space. */
    Mesh cutFrom(Mesh mesh, Tolerances tolerances, Consumer<String> remarks) {
        Mesh removed = PlaneCut.keptPart(mesh, intoMaterial, tolerances.point());
        if (removed.faces().length == 0) {
            return mesh;
        }
        if (bound.isEmpty() || covers(bound.get(), removed, tolerances.point())) {
            return PlaneCut.keptPart(mesh, intoMaterial.flipped(), tolerances.point());
        }
        return combined(Combination.Kind.DIFFERENCE, mesh, bound.get(), tolerances, remarks);
    }

    /** What the mesh and the half-space have in common. */
    Mesh commonWith(Mesh mesh, Tolerances tolerances, Consumer<String> remarks) {
        Mesh common = PlaneCut.keptPart(mesh, intoMaterial, tolerances.point());
        if (common.faces().length == 0 || bound.isEmpty() || covers(bound.get(), common, tolerances.point())) {
            return common;
        }
        return combined(Combination.Kind.INTERSECTION, mesh, bound.get(), tolerances, remarks);
    }

    private Mesh combined(
            Combination.Kind kind, Mesh mesh, Bound within, Tolerances tolerances, Consumer<String> remarks) {
        Mesh tool = PlaneCut.keptPart(prism(within, mesh), intoMaterial, tolerances.point());
        return Combination.of(kind, mesh, tool, tolerances, remarks);
    }

    /** Whether a mesh seen along the prism lies within its ring; says no when in doubt. */
    private static boolean covers(Bound bound, Mesh mesh, double tolerance) {
        if (!bound.ring.convex()) {
            return false;
        }
        double[] xyz = mesh.xyz();
        AffineTransformMatrix3D back = bound.axes.inverse();
        double slack = tolerance * Math.cbrt(Math.abs(back.determinant()));
        for (int[][] face : mesh.faces()) {
            for (int p : face[0]) {
                double x = back.applyX(xyz[3 * p], xyz[3 * p + 1], xyz[3 * p + 2]);
                double y = back.applyY(xyz[3 * p], xyz[3 * p + 1], xyz[3 * p + 2]);
                if (!withinConvex(bound.ring, x, y, slack)) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean withinConvex(Ring ring, double x, double y, double slack) {
        double sense = Math.signum(ring.signedArea());
        int last = ring.size() - 1;
        for (int i = 0; i < ring.size(); i++) {
            double dx = ring.x(i) - ring.x(last);
            double dy = ring.y(i) - ring.y(last);
            double side = dx * (y - ring.y(last)) - dy * (x - ring.x(last));
            if (sense * side < -slack * Math.hypot(dx, dy)) {
                return false;
            }
            last = i;
        }
        return true;
    }

    /** The prism, long enough to pass a mesh on both sides. */
    private static Mesh prism(Bound bound, Mesh mesh) {
        AffineTransformMatrix3D back = bound.axes.inverse();
        double[] xyz = mesh.xyz();
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int[][] face : mesh.faces()) {
            for (int p : face[0]) {
                double z = back.applyZ(xyz[3 * p], xyz[3 * p + 1], xyz[3 * p + 2]);
                low = Math.min(low, z);
                high = Math.max(high, z);
            }
        }
        double margin = Math.max(high - low, 1e-3 * Math.cbrt(Math.abs(back.determinant())));
        AffineTransformMatrix3D start =
                bound.axes.multiply(AffineTransformMatrix3D.createTranslation(Vector3D.of(0, 0, low - margin)));
        Profile profile = new Profile("", bound.ring, List.of());
        return Extrusion.of(profile, start, Vector3D.of(0, 0, high - low + 2 * margin))
                .mesh();
    }
}
