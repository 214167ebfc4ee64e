package runtrue.shape;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A planar face with holes, in metres.
 *
 * @param normal unit length, out of the solid; for open surfaces as the file orients them
 * @param outline counter-clockwise seen against the normal, not closed (first point not repeated), at least three points
 * @param holes clockwise seen against the normal, not closed
 */
public record Face(Vector3D normal, List<Vector3D> outline, List<List<Vector3D>> holes) {
    public Face {
        outline = List.copyOf(outline);
        holes = holes.stream().map(List::copyOf).toList();
    }
}
