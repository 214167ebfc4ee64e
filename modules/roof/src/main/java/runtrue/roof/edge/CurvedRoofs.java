package runtrue.roof.edge;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;
import runtrue.shape.Tolerances;

/**
 * Recognises curved roofs by their facets: planes that follow each other down the fall, each folded a little from the
 * next and all folded the same way. Facets are no planes to a roofer; their sheets run over all of them.
 *
 * <p>The sign of a curve is a facet with a fold below it and a fold above it, both lying across its fall and both bent
 * the same way. No plane of a plain roof has that: the planes of a gable or hip roof end at an eave; between gables in a
 * row every ridge is followed by a valley; a hip crosses the fall of at least one of its planes slantwise. Cones show
 * instead by three or more planes of one pitch whose falls turn from each to the next by no more than a curve's fold.
 * Common practice, no source.
 */
public final class CurvedRoofs {
    /** A fold sharper than this is one that a roofer makes: a sheet does not follow it by itself. */
    private static final double GREATEST_FOLD = RoofTolerance.FOLD_OF_CURVE.si();

    /** Facets of one surface share their edges; a centimetre is more than any exporter rounds by. */
    private static final double SHARED = RoofTolerance.FACET_JOINT.si();

    /** A fold lies across the fall when it is within 37 degrees of square to it: hips lie at 45 to one of their planes. */
    private static final double ACROSS = Math.cos(RoofTolerance.FOLD_ACROSS.si());

    /** A corner facet is at most this many times as large as the facet it hangs on; a plane beside a vault is larger. */
    private static final double LARGEST_CORNER = RoofTolerance.CORNER_FACET.si();

    /** Facets of a cone fall alike within the accuracy of narrow facets. */
    private static final double ALIKE = RoofTolerance.FACETS_ALONG.si();

    /** Two planes make a pitch change, three a curve. */
    private static final int LEAST_FACETS = 3;

    private final List<RoofPlane> planes;
    private final List<List<Fold>> folds = new ArrayList<>();

    /**
     * One plane's fold with another, or a joint between the two when it is too slight to be called a fold.
     *
     * @param across whether it lies across the fall of both
     * @param above whether the other plane lies up the fall from this one
     * @param bent whether the planes differ in direction at all
     * @param convex whether the roof bends downwards there
     * @param crown whether the two planes fall away from or towards each other
     * @param round whether the planes fall alike and the fold only turns the fall a little, as on a cone
     */
    private record Fold(
            int other, boolean across, boolean above, boolean bent, boolean convex, boolean crown, boolean round) {}

    private CurvedRoofs(List<RoofPlane> planes, Tolerances tolerances) {
        this.planes = planes;
        List<List<Side>> sides = planes.stream().map(Side::of).toList();
        planes.forEach(p -> folds.add(new ArrayList<>()));
        for (int i = 0; i < planes.size(); i++) {
            for (int k = i + 1; k < planes.size(); k++) {
                if (isSlightFold(planes.get(i), planes.get(k))) {
                    addFold(i, sides.get(i), k, sides.get(k), tolerances);
                }
            }
        }
    }

    /** Ids of planes that are facets of one curved roof, a set for each roof. */
    public static List<Set<String>> facets(List<RoofPlane> planes, Tolerances tolerances) {
        return new CurvedRoofs(planes, tolerances).facets();
    }

    private static boolean isSlightFold(RoofPlane a, RoofPlane b) {
        return a.frame().normal().dot(b.frame().normal()) > Math.cos(GREATEST_FOLD)
                && middle(a).distance(middle(b)) < radius(a) + radius(b) + SHARED;
    }

    private void addFold(int i, List<Side> first, int k, List<Side> second, Tolerances tolerances) {
        for (Side a : first) {
            for (Side b : second) {
                if (coincide(a, b)) {
                    Vector3D normal = b.frame().normal();
                    boolean bent = a.frame().normal().dot(normal) < Math.cos(tolerances.angle());
                    boolean across = liesAcross(a) && liesAcross(b);
                    boolean convex = a.out().dot(normal) > 0;
                    boolean crown = a.flow() * b.flow() > 0;
                    boolean round = bent && !across && isRound(a.plane(), b.plane());
                    folds.get(i).add(new Fold(k, across, a.flow() < 0, bent, convex, crown, round));
                    folds.get(k).add(new Fold(i, across, b.flow() < 0, bent, convex, crown, round));
                    return;
                }
            }
        }
    }

    /** Whether two sides run along each other for more than a hand's breadth, or for most of the shorter one. */
    private static boolean coincide(Side a, Side b) {
        double from = b.from().subtract(a.from()).dot(a.way());
        double to = b.to().subtract(a.from()).dot(a.way());
        double common = Math.min(a.length(), Math.max(from, to)) - Math.max(0, Math.min(from, to));
        return common > Math.min(0.1, 0.5 * Math.min(a.length(), b.length()))
                && distance(a, b.from()) < SHARED
                && distance(a, b.to()) < SHARED;
    }

    private static double distance(Side line, Vector3D point) {
        return point.subtract(line.from()).cross(line.way()).norm();
    }

    /** A level plane has no fall for the fold to lie across. */
    private static boolean liesAcross(Side side) {
        return side.plane().azimuth().isEmpty()
                || Math.abs(side.way().dot(side.plane().frame().across())) > ACROSS;
    }

    /** Planes of one pitch whose falls turn by no more than a curve's fold: hips of a roof over few sides turn by more. */
    private static boolean isRound(RoofPlane a, RoofPlane b) {
        if (a.azimuth().isEmpty() || b.azimuth().isEmpty() || Math.abs(a.pitch() - b.pitch()) > ALIKE) {
            return false;
        }
        double turn = a.azimuth().getAsDouble() - b.azimuth().getAsDouble();
        return Math.cos(turn) > Math.cos(GREATEST_FOLD);
    }

    private List<Set<String>> facets() {
        Set<Integer> curved = new HashSet<>();
        for (Set<Integer> group : groups(fold -> fold.across() && !fold.crown(), allPlanes())) {
            if (group.size() >= LEAST_FACETS && group.stream().anyMatch(this::isBentThrough)) {
                curved.addAll(group);
            }
        }
        groups(Fold::round, allPlanes()).stream()
                .filter(g -> g.size() >= LEAST_FACETS)
                .forEach(curved::addAll);
        // At the crown the facets of both flanks meet in what looks like a flat ridge.
        for (int plane : List.copyOf(curved)) {
            folds.get(plane).stream().filter(f -> f.across() && f.crown()).forEach(f -> curved.add(f.other()));
        }
        addCorners(curved);
        return groups(fold -> true, curved).stream().map(this::ids).toList();
    }

    /** Facets that end a surface at a corner have folds on one side only; they are no larger than their neighbours. */
    private void addCorners(Set<Integer> curved) {
        Deque<Integer> open = new ArrayDeque<>(curved.stream().sorted().toList());
        while (!open.isEmpty()) {
            int facet = open.remove();
            for (Fold fold : folds.get(facet)) {
                double area = planes.get(fold.other()).area();
                if (area < LARGEST_CORNER * planes.get(facet).area() && curved.add(fold.other())) {
                    open.add(fold.other());
                }
            }
        }
    }

    /** Whether a plane has folds of one kind both below and above it. */
    private boolean isBentThrough(int plane) {
        List<Fold> own = folds.get(plane).stream()
                .filter(f -> f.across() && f.bent() && !f.crown())
                .toList();
        boolean pitched = planes.get(plane).azimuth().isPresent();
        return pitched
                && own.stream()
                        .anyMatch(low -> !low.above()
                                && own.stream().anyMatch(high -> high.above() && high.convex() == low.convex()));
    }

    private Set<Integer> allPlanes() {
        Set<Integer> all = new HashSet<>();
        for (int i = 0; i < planes.size(); i++) {
            all.add(i);
        }
        return all;
    }

    /** Planes of the given ones that hang together by some of their folds. */
    private List<Set<Integer>> groups(Predicate<Fold> along, Set<Integer> among) {
        List<Set<Integer>> groups = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        for (int start = 0; start < planes.size(); start++) {
            if (!among.contains(start) || !seen.add(start)) {
                continue;
            }
            Set<Integer> group = new HashSet<>(Set.of(start));
            Deque<Integer> open = new ArrayDeque<>(group);
            while (!open.isEmpty()) {
                for (Fold fold : folds.get(open.remove())) {
                    if (along.test(fold) && among.contains(fold.other()) && seen.add(fold.other())) {
                        group.add(fold.other());
                        open.add(fold.other());
                    }
                }
            }
            groups.add(group);
        }
        return groups;
    }

    private Set<String> ids(Set<Integer> group) {
        Set<String> ids = new HashSet<>();
        group.forEach(i -> ids.add(planes.get(i).id()));
        return ids;
    }

    private static double radius(RoofPlane plane) {
        return plane.outline().getEnvelopeInternal().getDiameter() / 2;
    }

    private static Vector3D middle(RoofPlane plane) {
        var centre = plane.outline().getEnvelopeInternal().centre();
        return plane.frame().at(centre.x, centre.y);
    }
}
