package runtrue.roof.edge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import runtrue.roof.EdgeKind;
import runtrue.roof.Ids;
import runtrue.roof.Interval;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;
import runtrue.roof.Surround;
import runtrue.shape.Tolerances;

/**
 * Finds where planes end and how they meet. Every metre of an outline lies on one edge only; an edge that two planes
 * share counts once.
 */
public final class EdgeFinder {
    /** Planes farther apart have nothing to do with each other. */
    private static final double WIDEST_GUTTER = RoofTolerance.GUTTER.si();

    /** Gaps that differ by less are alike, metres: how planes were found then tells which meeting comes first. */
    private static final double SAME_GAP = 1e-3;

    private final Tolerances tolerances;

    private final Surround surround;

    /**
     * For one drop.
     *
     * @param surround where walls are found that planes end against
     */
    public EdgeFinder(Tolerances tolerances, Surround surround) {
        this.tolerances = tolerances;
        this.surround = surround;
    }

    /** Edges by id. */
    public List<RoofEdge> edges(List<RoofPlane> planes) {
        List<List<Side>> sides = planes.stream().map(Side::of).toList();
        List<Sphere> spheres = planes.stream().map(Sphere::of).toList();
        IdentityHashMap<Side, List<Interval>> shared = new IdentityHashMap<>();
        List<RoofEdge> edges = new ArrayList<>();
        // What lies nearest belongs together: a side a little farther off must not take it away.
        List<Meeting> all = new ArrayList<>();
        for (int i = 0; i < planes.size(); i++) {
            for (int k = i + 1; k < planes.size(); k++) {
                if (spheres.get(i).near(spheres.get(k))) {
                    all.addAll(meetings(sides.get(i), sides.get(k)));
                }
            }
        }
        all.sort(Comparator.comparingDouble(m -> Math.rint(m.gap() / SAME_GAP)));
        all.forEach(m -> addShared(edges, shared, m));
        List<List<Side>> free = sides.stream()
                .map(list -> list.stream()
                        .flatMap(s -> free(s, shared.getOrDefault(s, List.of())).stream())
                        .toList())
                .toList();
        edges.addAll(new OuterEdges(planes, surround, tolerances).edges(free));
        Set<String> curved = planes.stream()
                .filter(p -> p.curve().isPresent())
                .map(RoofPlane::id)
                .collect(Collectors.toSet());
        return identified(SharedEdges.joined(edges, tolerances.joint(), curved));
    }

    /** Along lines of intersection first: where a fold is sharp, they tell the edge better than either side does. */
    private List<Meeting> meetings(List<Side> first, List<Side> second) {
        List<Meeting> meetings = new ArrayList<>();
        for (List<Side> a : Side.flatParts(first)) {
            for (List<Side> b : Side.flatParts(second)) {
                meetings.addAll(Meeting.of(a, b, tolerances));
            }
        }
        IdentityHashMap<Side, Set<Side>> folded = new IdentityHashMap<>();
        meetings.forEach(m -> folded.computeIfAbsent(m.first(), s -> Collections.newSetFromMap(new IdentityHashMap<>()))
                .add(m.second()));
        Meeting.sideBySide(first, second, tolerances.joint()).stream()
                .filter(m -> !folded.getOrDefault(m.first(), Set.of()).contains(m.second()))
                .forEach(meetings::add);
        if (isFlat(first) && isFlat(second)) {
            meetings.addAll(Meeting.steps(first, second, tolerances.joint()));
        }
        return meetings;
    }

    private static boolean isFlat(List<Side> sides) {
        return !sides.isEmpty() && sides.get(0).plane().curve().isEmpty();
    }

    /** A sphere around a plane: tells most pairs that cannot meet at the cost of one distance. */
    private record Sphere(Vector3D middle, double radius) {
        static Sphere of(RoofPlane plane) {
            Coordinate centre = plane.outline().getEnvelopeInternal().centre();
            double radius = plane.outline().getEnvelopeInternal().getDiameter() / 2;
            return new Sphere(plane.frame().at(centre.x, centre.y), radius);
        }

        boolean near(Sphere other) {
            return middle.distance(other.middle) < WIDEST_GUTTER + radius + other.radius;
        }
    }

    private void addShared(List<RoofEdge> edges, IdentityHashMap<Side, List<Interval>> shared, Meeting meeting) {
        List<Interval> onFirst = shared.computeIfAbsent(meeting.first(), s -> new ArrayList<>());
        List<Interval> onSecond = shared.computeIfAbsent(meeting.second(), s -> new ArrayList<>());
        for (Meeting m : meeting.without(onFirst, onSecond, tolerances.joint())) {
            onFirst.add(m.onFirst());
            onSecond.add(m.onSecond());
            double cosine = m.first().frame().normal().dot(m.second().frame().normal());
            double angle = Math.acos(Math.max(-1, Math.min(1, cosine)));
            edges.add(new RoofEdge(
                    "",
                    m.step().isPresent() ? EdgeKind.STEP : EdgeKinds.shared(m.first(), m.second()),
                    List.of(m.first().plane().id(), m.second().plane().id()),
                    m.from(),
                    m.to(),
                    m.from().distance(m.to()),
                    OptionalDouble.of(angle),
                    m.step()));
        }
    }

    /** What is left of a side; ends shorter than a joint come from mitres and belong to the shared edge. */
    private List<Side> free(Side side, List<Interval> taken) {
        List<Interval> sorted = new ArrayList<>(taken);
        sorted.sort(Comparator.comparingDouble(Interval::from));
        List<Side> free = new ArrayList<>();
        double at = 0;
        for (Interval t : sorted) {
            if (t.from() - at > tolerances.joint()) {
                free.add(side.part(at, t.from()));
            }
            at = Math.max(at, t.to());
        }
        if (taken.isEmpty()) {
            free.add(side);
        } else if (side.length() - at > tolerances.joint()) {
            free.add(side.part(at, side.length()));
        }
        return free;
    }

    /** The same edges with ids made of their kind, planes and order along the roof. */
    public static List<RoofEdge> identified(List<RoofEdge> edges) {
        List<RoofEdge> ordered = new ArrayList<>(edges);
        ordered.sort(Comparator.comparing(EdgeFinder::key)
                .thenComparingDouble(e -> Math.rint(e.from().add(e.to()).getX() * 50))
                .thenComparingDouble(e -> Math.rint(e.from().add(e.to()).getY() * 50))
                .thenComparingDouble(e -> Math.rint(e.from().add(e.to()).getZ() * 50)));
        Map<String, Integer> count = new HashMap<>();
        return ordered.stream()
                .map(e -> e.withId(Ids.of("E", key(e) + "/" + count.merge(key(e), 1, Integer::sum))))
                .sorted(Comparator.comparing(RoofEdge::id))
                .collect(Collectors.toList());
    }

    private static String key(RoofEdge edge) {
        return edge.kind() + "/" + edge.planes().stream().sorted().collect(Collectors.joining("/"));
    }
}
