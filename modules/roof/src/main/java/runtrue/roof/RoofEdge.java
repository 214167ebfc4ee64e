package runtrue.roof;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * One edge: straight, or along the arc of a curved plane.
 *
 * @param planes ids of the one or two planes that share it
 * @param from start, metres, moved by the drop origin
 * @param length metres, along the arc where it follows one; with returns at its ends that are too short for an edge of
 *     their own
 * @param angle between the planes' normals, radians; empty for edges with nothing beyond, and where it
 *     changes along the arc
 * @param step from the one plane up to the other, square to them, metres; of steps only
 */
public record RoofEdge(
        String id,
        EdgeKind kind,
        List<String> planes,
        Vector3D from,
        Vector3D to,
        double length,
        OptionalDouble angle,
        OptionalDouble step) {
    public RoofEdge {
        planes = List.copyOf(planes);
    }

    /** The same under another id. */
    public RoofEdge withId(String other) {
        return new RoofEdge(other, kind, planes, from, to, length, angle, step);
    }

    /** The same for other planes. */
    public RoofEdge withPlanes(List<String> others) {
        return new RoofEdge(id, kind, others, from, to, length, angle, step);
    }
}
