package runtrue.shape.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.shape.Sweep;
import runtrue.shape.Tolerances;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.mesh.Shells;

/**
 * One representation item as a mesh.
 *
 * @param sweep where the item is one straight extrusion, cut or whole
 */
public record Solid(Mesh mesh, Optional<Sweep> sweep) {
    /** The same item with another mesh, after a cut. */
    public Solid with(Mesh cut) {
        return new Solid(cut, sweep);
    }

    /** The same item with its nearly coplanar faces merged; faces of extrusions are exact as they are. */
    public Solid merged(Tolerances tolerances) {
        return sweep.isPresent() ? this : with(Shells.merged(mesh, tolerances));
    }

    /** A sweep moved by a transform. */
    public static Sweep moved(Sweep sweep, AffineTransformMatrix3D transform) {
        List<Vector3D> section = new ArrayList<>(sweep.section().size());
        for (Vector3D corner : sweep.section()) {
            section.add(transform.apply(corner));
        }
        return new Sweep(sweep.profileName(), section, transform.applyVector(sweep.path()));
    }
}
