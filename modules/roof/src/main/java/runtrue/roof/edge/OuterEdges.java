package runtrue.roof.edge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.EdgeKind;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;
import runtrue.roof.Surround;
import runtrue.shape.Tolerances;

/** Names the sides at which no other plane's side lies: by how water runs at them, and what stands beside or below. */
final class OuterEdges {
    /** Two eaves that face each other across less than this share a gutter: wider ones are walked in, not sheeted over. */
    private static final double WIDEST_GUTTER = RoofTolerance.GUTTER.si();

    /** Shorter pieces of eave beside a wall are returns at its piers and openings. */
    private static final double LEAST_GUTTER = RoofTolerance.WALL.si();

    private static final double LEVEL = Math.sin(RoofTolerance.LEVEL_EDGE.si());

    private final Tolerances tolerances;
    private final List<RoofPlane> planes;
    private final HigherParts higher;

    OuterEdges(List<RoofPlane> planes, Surround surround, Tolerances tolerances) {
        this.tolerances = tolerances;
        this.planes = planes;
        higher = new HigherParts(planes, surround);
    }

    /**
     * Edges without ids.
     *
     * @param free for each plane the sides and parts of sides that no other plane's side adjoins, in the order of the ring
     */
    List<RoofEdge> edges(List<List<Side>> free) {
        List<RoofEdge> edges = new ArrayList<>();
        List<Side> all = free.stream().flatMap(List::stream).toList();
        Set<Side> inValleys = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Valleys.Valley valley : new Valleys(planes, tolerances.joint()).among(all)) {
            valley.edge().ifPresent(edges::add);
            inValleys.addAll(valley.sides());
        }
        List<Side> outer = all.stream().filter(s -> !inValleys.contains(s)).toList();
        for (List<Side> sides : free) {
            List<Side> left = sides.stream().filter(s -> !inValleys.contains(s)).toList();
            for (Returns side : Returns.of(left, tolerances.joint())) {
                edges.add(edge(side, kind(side.side(), outer)));
            }
        }
        return edges;
    }

    private static RoofEdge edge(Returns side, EdgeKind kind) {
        return new RoofEdge(
                "",
                kind,
                List.of(side.side().plane().id()),
                side.side().from(),
                side.side().to(),
                side.length(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /**
     * Water cannot leave over an eave that stands against a wall or parapet: it needs a gutter with a lining of its own.
     * Down a sloping side it runs along what rises there, as at an abutment along the fall.
     */
    private EdgeKind kind(Side side, List<Side> outer) {
        EdgeKind kind = EdgeKinds.outer(side);
        if (kind != EdgeKind.EAVE) {
            return higher.riseAlong(side) ? EdgeKind.ABUTMENT : kind;
        }
        boolean gutter = outer.stream().anyMatch(other -> isAcrossGutter(side, other))
                || (side.length() > LEAST_GUTTER && higher.wallRisesAlong(side));
        if (!gutter && side.slope() > LEVEL && higher.roofRisesAlong(side)) {
            return EdgeKind.ABUTMENT;
        }
        return gutter ? EdgeKind.BOX_GUTTER : kind;
    }

    /** Whether another eave faces this one at about its level, a gutter's width away, along at least half of it. */
    private boolean isAcrossGutter(Side a, Side b) {
        if (a.plane().id().equals(b.plane().id())
                || EdgeKinds.outer(b) != EdgeKind.EAVE
                || a.way().dot(b.way()) > -0.99) {
            return false;
        }
        Vector3D gap = b.middle().subtract(a.middle());
        Vector3D out = Vector3D.of(a.out().getX(), a.out().getY(), 0).normalize();
        double across = gap.dot(out);
        double start = b.to().subtract(a.from()).dot(a.way());
        double end = b.from().subtract(a.from()).dot(a.way());
        double common = Math.min(a.length(), Math.max(start, end)) - Math.max(0, Math.min(start, end));
        return across > 0
                && across < WIDEST_GUTTER
                && Math.abs(gap.getZ()) < tolerances.edge()
                && common > a.length() / 2;
    }
}
