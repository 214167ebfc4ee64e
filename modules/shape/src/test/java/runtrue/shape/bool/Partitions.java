package runtrue.shape.bool;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.PlaneConvexSubset;
import org.apache.commons.geometry.euclidean.threed.Planes;
import org.apache.commons.geometry.euclidean.threed.RegionBSPTree3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.numbers.core.Precision;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.solid.Bodies;

/** The same booleans by the BSP trees of Apache Commons Geometry: the plain version that ours is judged by. */
final class Partitions {
    private Partitions() {}

    static double difference(Mesh a, Mesh b) {
        RegionBSPTree3D result = RegionBSPTree3D.empty();
        result.difference(tree(a), tree(b));
        return result.getSize();
    }

    /** Faces must be convex and without holes. */
    static RegionBSPTree3D tree(Mesh mesh) {
        Precision.DoubleEquivalence precision = Precision.doubleEquivalenceOfEpsilon(1e-9);
        List<PlaneConvexSubset> boundaries = new ArrayList<>();
        for (int[][] face : mesh.faces()) {
            List<Vector3D> corners = new ArrayList<>();
            for (int p : face[0]) {
                corners.add(Vector3D.of(Bodies.point(mesh, p)));
            }
            boundaries.add(Planes.convexPolygonFromVertices(corners, precision));
        }
        return RegionBSPTree3D.from(boundaries);
    }
}
