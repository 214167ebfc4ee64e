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
 */
public record RoofEdge(
        String id,
        EdgeKind kind,
        List<String> planes,
        Vector3D from,
        Vector3D to,
        double length,
        OptionalDouble angle) {
    public RoofEdge {
        planes = List.copyOf(planes);
    }
}
