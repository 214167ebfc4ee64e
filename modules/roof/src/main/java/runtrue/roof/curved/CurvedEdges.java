package runtrue.roof.curved;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import runtrue.roof.EdgeKind;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;

/** Joins the straight pieces of edges that follow the arc of a curved plane to one edge with its length along the arc. */
final class CurvedEdges {
    /** An edge of the development goes straight on within this. */
    private static final double STRAIGHT_ON = Math.cos(RoofTolerance.EDGE_ALONG.si());

    /** A valley turns by no more from one facet to the next, with what rounding does to short pieces. */
    private static final double TURNED_ON = Math.cos(RoofTolerance.FOLD_ACROSS.si());

    /** Pieces of a valley that facets too short for a flashing of their own lie between are one. */
    private static final double RETURN = RoofTolerance.RETURN.si();

    private static final double SHARED = RoofTolerance.CIRCLE.si();

    private final Map<String, Curve> curves = new HashMap<>();
    private final double joint;

    /**
     * Prepares.
     *
     * @param joint gaps up to this are bridged, metres
     */
    CurvedEdges(List<RoofPlane> curved, double joint) {
        curved.forEach(p -> curves.put(p.id(), p.curve().orElseThrow()));
        this.joint = joint;
    }

    /** A stretch of edge in the development of the first curved plane that it belongs to. */
    private record Piece(RoofEdge edge, Vector2D from, Vector2D to, double length) {
        Vector2D way() {
            return to.subtract(from).normalize();
        }

        Vector2D top() {
            return edge.to().getZ() > edge.from().getZ() ? to : from;
        }

        Vector2D foot() {
            return edge.to().getZ() > edge.from().getZ() ? from : to;
        }
    }

    /** Edges that no curved plane has a part in as they are, others joined and without ids of their own. */
    List<RoofEdge> joined(List<RoofEdge> edges) {
        List<RoofEdge> joined = new ArrayList<>();
        Map<String, List<Piece>> alike = new TreeMap<>();
        for (RoofEdge edge : edges) {
            Optional<Curve> curve = edge.planes().stream()
                    .sorted()
                    .flatMap(p -> Stream.ofNullable(curves.get(p)))
                    .findFirst();
            curve.ifPresentOrElse(
                    c -> alike.computeIfAbsent(
                                    edge.kind() + "/"
                                            + edge.planes().stream().sorted().toList(),
                                    k -> new ArrayList<>())
                            .add(piece(edge, c)),
                    () -> joined.add(edge));
        }
        alike.values().forEach(pieces -> joined.addAll(edges(pieces)));
        return joined;
    }

    private static Piece piece(RoofEdge edge, Curve curve) {
        Vector2D from = Vector2D.of(curve.u(edge.from()), curve.v(edge.from()));
        Vector2D to = Vector2D.of(curve.u(edge.to()), curve.v(edge.to()));
        return new Piece(edge, from, to, from.distance(to));
    }

    private List<RoofEdge> edges(List<Piece> pieces) {
        // Those that share an end first: else a gap could be bridged by which a short piece lies.
        double widest = turns(pieces.get(0)) ? Math.max(joint, RETURN) : joint;
        return chained(chained(pieces, SHARED), widest).stream()
                .map(c -> new RoofEdge(
                        "",
                        c.edge().kind(),
                        c.edge().planes(),
                        c.edge().from(),
                        c.edge().to(),
                        c.length(),
                        c.edge().angle(),
                        OptionalDouble.empty()))
                .toList();
    }

    private static List<Piece> chained(List<Piece> pieces, double gap) {
        List<Piece> chains = new ArrayList<>();
        for (Piece piece : pieces) {
            Piece grown = piece;
            boolean joined = true;
            while (joined) {
                joined = false;
                for (int i = 0; i < chains.size() && !joined; i++) {
                    if (goesOn(chains.get(i), grown, gap)) {
                        grown = together(chains.remove(i), grown);
                        joined = true;
                    }
                }
            }
            chains.add(grown);
        }
        return chains;
    }

    private static boolean goesOn(Piece a, Piece b, double gap) {
        double cosine = Math.abs(a.way().dot(b.way()));
        return turns(a)
                ? cosine > TURNED_ON
                        && Math.min(a.top().distance(b.foot()), b.top().distance(a.foot())) <= gap
                : cosine > STRAIGHT_ON && nearestEnds(a, b) <= gap;
    }

    /** Along a valley between a barrel and a slope the line turns in the development, and ends where it stops rising. */
    private static boolean turns(Piece piece) {
        EdgeKind kind = piece.edge().kind();
        return piece.edge().planes().size() == 2 && (kind == EdgeKind.VALLEY || kind == EdgeKind.HIP);
    }

    private static double nearestEnds(Piece a, Piece b) {
        return Math.min(
                Math.min(a.from().distance(b.from()), a.from().distance(b.to())),
                Math.min(a.to().distance(b.from()), a.to().distance(b.to())));
    }

    /** From the far end of one to the far end of the other, in the direction of the first. */
    private static Piece together(Piece a, Piece b) {
        Vector2D way = a.way();
        boolean same = way.dot(b.way()) > 0;
        Vector2D start = same ? b.from() : b.to();
        Vector2D end = same ? b.to() : b.from();
        boolean before = start.dot(way) < a.from().dot(way);
        boolean after = end.dot(way) > a.to().dot(way);
        RoofEdge e = a.edge();
        RoofEdge f = b.edge();
        RoofEdge edge = new RoofEdge(
                "",
                e.kind(),
                e.planes(),
                before ? (same ? f.from() : f.to()) : e.from(),
                after ? (same ? f.to() : f.from()) : e.to(),
                0,
                alike(e.angle(), f.angle()) ? e.angle() : OptionalDouble.empty(),
                OptionalDouble.empty());
        return new Piece(edge, before ? start : a.from(), after ? end : a.to(), a.length() + b.length());
    }

    /** An edge along the arc beside a flat plane has no one angle. */
    private static boolean alike(OptionalDouble a, OptionalDouble b) {
        return a.isPresent()
                && b.isPresent()
                && Math.abs(a.getAsDouble() - b.getAsDouble()) < RoofTolerance.FACETS_ALONG.si();
    }
}
