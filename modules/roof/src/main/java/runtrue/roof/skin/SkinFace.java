package runtrue.roof.skin;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.ReadElement;

/**
 * A face of the upper skin of one element, metres, moved by the drop origin.
 *
 * @param normal unit length, upward
 * @param outline counter-clockwise seen from above, not closed
 * @param holes clockwise seen from above, not closed
 * @param thickness to the parallel face below, square to the face; empty when there is none
 * @param remark what a person should know of how it was found; empty when nothing
 */
public record SkinFace(
        ReadElement source,
        Vector3D normal,
        List<Vector3D> outline,
        List<List<Vector3D>> holes,
        OptionalDouble thickness,
        String remark) {
    public SkinFace {
        outline = List.copyOf(outline);
        holes = holes.stream().map(List::copyOf).toList();
    }

    /** Without its holes, square metres. */
    public double area() {
        return PlanarArea.vector(outline).norm()
                - holes.stream().mapToDouble(h -> PlanarArea.vector(h).norm()).sum();
    }

    /** Lowest z of its corners, metres. */
    public double lowest() {
        return outline.stream().mapToDouble(Vector3D::getZ).min().orElseThrow();
    }
}
