package runtrue.roof.edge;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.EdgeKind;
import runtrue.roof.PlaneFrame;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.Surround;

/** Heights of what planes end against: rain that a wall catches runs down on to the plane below. */
public final class Rises {
    private Rises() {}

    /** Metres above the plane, by id of the abutment. Those along which nothing was found, but for the end, are left out. */
    public static Map<String, Double> ofAbutments(List<RoofPlane> planes, List<RoofEdge> edges, Surround surround) {
        HigherParts higher = new HigherParts(planes, surround);
        Map<String, Double> heights = new HashMap<>();
        for (RoofEdge edge : edges) {
            if (edge.kind() == EdgeKind.ABUTMENT) {
                planes.stream()
                        .filter(p -> edge.planes().contains(p.id()))
                        .findFirst()
                        .ifPresent(p ->
                                higher.heightAlong(side(p, edge)).ifPresent(height -> heights.put(edge.id(), height)));
            }
        }
        return heights;
    }

    private static Side side(RoofPlane plane, RoofEdge edge) {
        PlaneFrame frame = plane.frameNear(edge.from().add(edge.to()).multiply(0.5));
        Vector3D way = edge.to().subtract(edge.from());
        return new Side(
                plane, frame, edge.from(), edge.to(), way.cross(frame.normal()).normalize());
    }
}
