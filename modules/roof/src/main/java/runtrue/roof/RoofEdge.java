package runtrue.roof;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * One straight edge.
 *
 * @param planes ids of the one or two planes that share it; facets of a curved roof are not among them
 * @param from start, metres, moved by the drop origin
 * @param angle between the planes' normals, radians; empty for edges with nothing beyond
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
