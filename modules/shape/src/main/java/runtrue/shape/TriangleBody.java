package runtrue.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.mesh.Shells;

/** Bodies from triangles that another engine made: start with {@link #of}. */
public final class TriangleBody {
    private TriangleBody() {}

    /**
     * Triangles welded, turned outward where they close, and coplanar neighbours merged, as for bodies of the built-in
     * reader.
     *
     * @param xyz three coordinates a point, metres, the element's own axes; points may be repeated
     * @param corners three point numbers a triangle, counter-clockwise seen from outside
     * @param world from the element's axes to the world's less the origin, both in metres
     * @param engine who made the triangles, as {@link Shape.Body#engine}
     * @return unread when no triangle has an area, or when it lies absurdly far off
     * @throws IndexOutOfBoundsException when a corner names a point that is not there
     */
    public static Shape of(
            double[] xyz,
            int[] corners,
            AffineTransformMatrix3D world,
            Tolerances tolerances,
            String engine,
            String representation) {
        List<String> remarks = new ArrayList<>();
        List<Face> faces = new ArrayList<>();
        boolean closed = true;
        for (Mesh solid : Shells.ofTriangles(xyz, corners, tolerances, remarks::add)) {
            Mesh mesh = Shells.merged(solid, tolerances).transformed(world);
            if (!(mesh.box().reach() < ProductReader.FARTHEST)) {
                return new Shape.Unread(ProductReader.TOO_FAR, representation);
            }
            closed &= mesh.closed();
            Faces.addAll(mesh, faces);
        }
        return faces.isEmpty()
                ? new Shape.Unread("No face of it has an area.", representation)
                : new Shape.Body(faces, closed, Optional.empty(), representation, remarks, engine, false);
    }
}
