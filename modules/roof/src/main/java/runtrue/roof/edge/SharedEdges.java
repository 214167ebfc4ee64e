package runtrue.roof.edge;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofTolerance;

/** Joins edges of the same two planes that go on straight from each other: one flashing to a roofer. */
final class SharedEdges {
    private static final double STRAIGHT_ON = Math.cos(RoofTolerance.LEVEL_EDGE.si());

    private SharedEdges() {}

    /**
     * Edges of one plane as they are, those of two as few as possible.
     *
     * @param joint gaps up to this are bridged, metres
     * @param apart ids of planes whose edges follow an arc
     */
    static List<RoofEdge> joined(List<RoofEdge> edges, double joint, Set<String> apart) {
        List<RoofEdge> joined = new ArrayList<>();
        TreeMap<String, List<RoofEdge>> alike = new TreeMap<>();
        for (RoofEdge edge : edges) {
            if (edge.planes().size() < 2 || edge.planes().stream().anyMatch(apart::contains)) {
                joined.add(edge);
            } else {
                String key = edge.kind() + "/" + edge.planes().stream().sorted().toList();
                alike.computeIfAbsent(key, k -> new ArrayList<>()).add(edge);
            }
        }
        alike.values().forEach(same -> joined.addAll(chained(same, joint)));
        return joined;
    }

    private static List<RoofEdge> chained(List<RoofEdge> edges, double joint) {
        List<RoofEdge> chains = new ArrayList<>();
        for (RoofEdge edge : edges) {
            RoofEdge grown = edge;
            for (int i = 0; i < chains.size(); i++) {
                if (goesOn(chains.get(i), grown, joint)) {
                    grown = together(chains.remove(i), grown);
                    i = -1;
                }
            }
            chains.add(grown);
        }
        return chains;
    }

    private static boolean goesOn(RoofEdge a, RoofEdge b, double joint) {
        Vector3D way = a.to().subtract(a.from()).normalize();
        double cosine = Math.abs(way.dot(b.to().subtract(b.from()).normalize()));
        double nearest = Math.min(
                Math.min(a.from().distance(b.from()), a.from().distance(b.to())),
                Math.min(a.to().distance(b.from()), a.to().distance(b.to())));
        return cosine > STRAIGHT_ON && nearest < joint;
    }

    /** From the far end of one to the far end of the other, in the direction of the longer. */
    private static RoofEdge together(RoofEdge a, RoofEdge b) {
        RoofEdge main = b.length() > a.length() ? b : a;
        Vector3D way = main.to().subtract(main.from()).normalize();
        Vector3D from = main.from();
        Vector3D to = main.to();
        for (Vector3D p : List.of(a.from(), a.to(), b.from(), b.to())) {
            from = p.subtract(from).dot(way) < 0 ? p : from;
            to = p.subtract(to).dot(way) > 0 ? p : to;
        }
        return new RoofEdge("", main.kind(), main.planes(), from, to, from.distance(to), main.angle(), main.step());
    }
}
