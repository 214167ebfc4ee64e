package runtrue.roof.edge;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import runtrue.roof.EdgeKind;
import runtrue.roof.RoofEdge;

/**
 * Recognises curved roofs by their facets: planes that follow each other down the fall with a small change of pitch at
 * each level edge. Facets are no planes to a roofer; their sheets run over all of them.
 */
public final class CurvedRoofs {
    /** A fold sharper than this is one that a roofer makes: a sheet does not follow it by itself. */
    private static final double GREATEST_FOLD = Math.toRadians(15);

    /** Two planes make a pitch change, three a curve. */
    private static final int LEAST_FACETS = 3;

    private CurvedRoofs() {}

    /** Ids of planes that are facets of one curved roof, a set for each roof. */
    public static List<Set<String>> facets(List<RoofEdge> edges) {
        Map<String, List<String>> next = new HashMap<>();
        link(next, edges, EdgeKind.PITCH_CHANGE);
        List<Set<String>> curved = new ArrayList<>(
                groups(next).stream().filter(g -> g.size() >= LEAST_FACETS).toList());
        Set<String> found = new HashSet<>();
        curved.forEach(found::addAll);
        // At the crown the facets of both flanks meet in what looks like a flat ridge.
        Map<String, List<String>> crowns = new HashMap<>();
        link(crowns, edges, EdgeKind.RIDGE);
        crowns.keySet().retainAll(found);
        crowns.forEach((plane, others) -> others.forEach(
                o -> next.computeIfAbsent(plane, p -> new ArrayList<>()).add(o)));
        crowns.forEach((plane, others) -> others.forEach(
                o -> next.computeIfAbsent(o, p -> new ArrayList<>()).add(plane)));
        return groups(next).stream().filter(g -> g.size() >= LEAST_FACETS).toList();
    }

    private static void link(Map<String, List<String>> next, List<RoofEdge> edges, EdgeKind kind) {
        for (RoofEdge edge : edges) {
            if (edge.kind() == kind && edge.planes().size() == 2 && edge.angle().orElse(Math.PI) <= GREATEST_FOLD) {
                String a = edge.planes().get(0);
                String b = edge.planes().get(1);
                next.computeIfAbsent(a, p -> new ArrayList<>()).add(b);
                next.computeIfAbsent(b, p -> new ArrayList<>()).add(a);
            }
        }
    }

    private static List<Set<String>> groups(Map<String, List<String>> next) {
        List<Set<String>> groups = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (String start : next.keySet().stream().sorted().toList()) {
            if (!seen.add(start)) {
                continue;
            }
            Set<String> group = new HashSet<>(Set.of(start));
            Deque<String> open = new ArrayDeque<>(group);
            while (!open.isEmpty()) {
                for (String other : next.getOrDefault(open.remove(), List.of())) {
                    if (seen.add(other)) {
                        group.add(other);
                        open.add(other);
                    }
                }
            }
            groups.add(group);
        }
        return groups;
    }
}
