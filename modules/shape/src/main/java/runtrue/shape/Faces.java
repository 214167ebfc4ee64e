package runtrue.shape;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import runtrue.shape.mesh.FacePlane;
import runtrue.shape.mesh.Mesh;

/** Faces of a mesh as the contract hands them out. */
final class Faces {
    private Faces() {}

    /** Adds the faces of a mesh; points are shared between them, faces without area are left out. */
    static void addAll(Mesh mesh, List<Face> target) {
        @Nullable Vector3D[] points = new Vector3D[mesh.xyz().length / 3];
        for (int f = 0; f < mesh.faces().length; f++) {
            FacePlane plane = mesh.plane(f);
            if (plane.degenerate()) {
                continue;
            }
            int[][] loops = mesh.faces()[f];
            List<List<Vector3D>> holes = new ArrayList<>(loops.length - 1);
            for (int i = 1; i < loops.length; i++) {
                holes.add(corners(mesh.xyz(), loops[i], points));
            }
            Vector3D normal = Vector3D.of(plane.nx(), plane.ny(), plane.nz());
            target.add(new Face(normal, corners(mesh.xyz(), loops[0], points), holes));
        }
    }

    private static List<Vector3D> corners(double[] xyz, int[] loop, @Nullable Vector3D[] points) {
        List<Vector3D> corners = new ArrayList<>(loop.length);
        for (int p : loop) {
            Vector3D point = points[p];
            if (point == null) {
                point = Vector3D.of(xyz[3 * p], xyz[3 * p + 1], xyz[3 * p + 2]);
                points[p] = point;
            }
            corners.add(point);
        }
        return corners;
    }
}
