package runtrue.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import runtrue.roof.EdgeKind;
import runtrue.roof.Roof;
import runtrue.roof.RoofEdge;

/** Lengths of edges by plane and kind: what flashings are ordered from. */
final class EdgeBill {
    private EdgeBill() {}

    static List<BillLine> lines(Roof roof) {
        Map<String, Map<EdgeKind, List<RoofEdge>>> edges = new TreeMap<>();
        for (RoofEdge edge : roof.edges()) {
            String owner = edge.planes().isEmpty() ? "" : edge.planes().get(0);
            edges.computeIfAbsent(owner, o -> new TreeMap<>())
                    .computeIfAbsent(edge.kind(), k -> new ArrayList<>())
                    .add(edge);
        }
        List<BillLine> lines = new ArrayList<>();
        edges.forEach((plane, kinds) -> kinds.forEach((kind, of) -> lines.add(line(plane, kind, of))));
        return lines;
    }

    private static BillLine line(String plane, EdgeKind kind, List<RoofEdge> edges) {
        double length = edges.stream().mapToDouble(RoofEdge::length).sum();
        boolean shared = edges.stream().anyMatch(edge -> edge.planes().size() > 1);
        return new BillLine(
                kind.label(),
                kind.label() + ", length",
                plane,
                length,
                "m",
                0,
                shared
                        ? "sum of the edges of this kind; shared with a neighbour, counted here only"
                        : "sum of the edges of this kind",
                edges.stream().map(RoofEdge::id).toList());
    }
}
