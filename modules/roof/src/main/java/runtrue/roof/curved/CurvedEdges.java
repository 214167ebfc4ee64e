package runtrue.roof.curved;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
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

    /**
     * A stretch of edge in the development of the first curved plane that it belongs to.
     *
     * @param leaving unit direction at its start
     * @param arriving unit direction at its end; another one where the edge turns
     */
    private record Piece(
            RoofEdge edge, Vector2D from, Vector2D to, Vector2D leaving, Vector2D arriving, double length) {
        Vector2D way() {
            return to.subtract(from).normalize();
        }

        private boolean rises() {
            return edge.to().getZ() > edge.from().getZ();
        }

        Vector2D top() {
            return rises() ? to : from;
        }

        Vector2D foot() {
            return rises() ? from : to;
        }

        Vector2D wayAtTop() {
            return rises() ? arriving : leaving;
        }

        Vector2D wayAtFoot() {
            return rises() ? leaving : arriving;
        }

        Piece reversed() {
            return new Piece(between(edge.to(), edge.from()), to, from, arriving.negate(), leaving.negate(), length);
        }

        RoofEdge between(Vector3D start, Vector3D end) {
            return new RoofEdge(
                    edge.id(), edge.kind(), edge.planes(), start, end, edge.length(), edge.angle(), edge.step());
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
        Vector2D way = to.subtract(from).normalize();
        return new Piece(edge, from, to, way, way, from.distance(to));
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
        return turns(a)
                ? isBelow(a, b, gap) || isBelow(b, a, gap)
                : Math.abs(a.way().dot(b.way())) > STRAIGHT_ON && nearestEnds(a, b) <= gap;
    }

    /** Whether one piece of a turning edge goes on where another ends at its top, turning there by no more than a fold. */
    private static boolean isBelow(Piece a, Piece b, double gap) {
        return a.top().distance(b.foot()) <= gap && Math.abs(a.wayAtTop().dot(b.wayAtFoot())) > TURNED_ON;
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

    private static Piece together(Piece a, Piece b) {
        if (turns(a)) {
            return b.foot().distance(a.top()) <= a.foot().distance(b.top()) ? upward(a, b) : upward(b, a);
        }
        return straight(a, a.way().dot(b.way()) > 0 ? b : b.reversed());
    }

    /** From the foot of the lower piece to the top of the upper one. */
    private static Piece upward(Piece lower, Piece upper) {
        Piece a = lower.rises() ? lower : lower.reversed();
        Piece b = upper.rises() ? upper : upper.reversed();
        return joined(a, b, a.to().distance(b.from()));
    }

    /** From the far end of one to the far end of the other, which runs the same way. */
    private static Piece straight(Piece a, Piece b) {
        Vector2D way = a.way();
        Piece first = b.from().dot(way) < a.from().dot(way) ? b : a;
        Piece last = b.to().dot(way) > a.to().dot(way) ? b : a;
        if (first.equals(last)) {
            return first;
        }
        return joined(first, last, last.from().subtract(first.to()).dot(way));
    }

    /** @param gap between the two, metres; negative where they overlap */
    private static Piece joined(Piece first, Piece last, double gap) {
        RoofEdge e = first.edge();
        RoofEdge f = last.edge();
        RoofEdge edge = new RoofEdge(
                "",
                e.kind(),
                e.planes(),
                e.from(),
                f.to(),
                0,
                alike(e.angle(), f.angle()) ? e.angle() : OptionalDouble.empty(),
                OptionalDouble.empty());
        return new Piece(
                edge, first.from(), last.to(), first.leaving(), last.arriving(), first.length() + gap + last.length());
    }

    /** An edge along the arc beside a flat plane has no one angle. */
    private static boolean alike(OptionalDouble a, OptionalDouble b) {
        return a.isPresent()
                && b.isPresent()
                && Math.abs(a.getAsDouble() - b.getAsDouble()) < RoofTolerance.FACETS_ALONG.si();
    }
}
