package runtrue.roof.edge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.EdgeKind;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofTolerance;

/**
 * Valleys between planes of which the outlines do not meet: a dormer stands on a plane that goes on below it, or is cut
 * back to the dormer's underside, or ends short of the gutter. Water runs at a sloping side and there is roof beyond, so
 * it is no eave. Common practice, no source.
 */
final class Valleys {
    private static final double WIDEST = RoofTolerance.VALLEY.si();
    private static final double LEVEL = Math.sin(RoofTolerance.LEVEL_EDGE.si());
    private static final double ALONG = Math.cos(RoofTolerance.EDGE_ALONG.si());
    private static final double TURNED = Math.cos(Math.PI / 4);
    private static final double LEAST_FOLD = Math.sin(RoofTolerance.PLANES_MEET.si());

    private final List<RoofPlane> planes;
    private final List<Polygon> plans;
    private final double joint;

    /** One valley, as long as the longer of its sides, and the sides that it is the edge of; empty for the other side of one. */
    record Valley(Optional<RoofEdge> edge, List<Side> sides) {}

    Valleys(List<RoofPlane> planes, double joint) {
        this.planes = planes.stream().filter(p -> p.curve().isEmpty()).toList();
        plans = this.planes.stream().map(PlanViews::plan).toList();
        this.joint = joint;
    }

    /** Valleys among sides that nothing adjoins. */
    List<Valley> among(List<Side> outer) {
        List<Side> sloping = outer.stream()
                .filter(s -> !isCurved(s) && s.slope() > LEVEL && EdgeKinds.outer(s) == EdgeKind.EAVE)
                .sorted(Comparator.comparingDouble(s -> -s.length()))
                .toList();
        Set<Side> taken = Collections.newSetFromMap(new IdentityHashMap<>());
        List<Valley> valleys = besideCurves(outer, sloping, taken);
        for (Side a : sloping) {
            if (taken.contains(a)) {
                continue;
            }
            Optional<Side> other = sloping.stream()
                    .filter(b -> !taken.contains(b) && isBeside(a, b))
                    .max(Comparator.comparingDouble(b -> common(a, b)));
            other.ifPresent(b -> {
                taken.addAll(List.of(a, b));
                valleys.add(valley(a, b.plane(), List.of(a, b)));
            });
            if (other.isEmpty()) {
                under(a).ifPresent(plane -> {
                    taken.add(a);
                    valleys.add(valley(a, plane, List.of(a)));
                });
            }
        }
        return valleys;
    }

    /**
     * Valleys between curved planes and flat ones, a piece for each facet. They follow the curve: a side that the flat plane
     * has beside it, often sawn straight, is their other side, also where it runs level below the crown or with the fall at
     * the foot. Near the crown water runs along them, and yet the plane beyond rises: what comes down there runs in the
     * valley too.
     */
    private List<Valley> besideCurves(List<Side> outer, List<Side> sloping, Set<Side> taken) {
        List<Valley> valleys = new ArrayList<>();
        List<Side> flat = outer.stream().filter(s -> !isCurved(s)).toList();
        IdentityHashMap<Side, Double> common = new IdentityHashMap<>();
        for (Side b : outer.stream().filter(Valleys::isCurved).toList()) {
            boolean runsInto = b.slope() > LEVEL && EdgeKinds.outer(b) == EdgeKind.EAVE;
            Stream<Side> beside = runsInto ? sloping.stream().filter(a -> isBesideCurve(a, b)) : Stream.empty();
            under(b).or(() -> beside.map(Side::plane).findFirst()).ifPresent(plane -> {
                taken.add(b);
                valleys.add(valley(b, plane, List.of(b)));
                flat.stream()
                        .filter(a -> a.plane().id().equals(plane.id()) && isBesideCurve(a, b))
                        .forEach(a -> common.merge(a, common(a, b), Double::sum));
            });
        }
        flat.stream().filter(a -> common.getOrDefault(a, 0.0) > a.length() / 2).forEach(a -> {
            taken.add(a);
            valleys.add(new Valley(Optional.empty(), List.of(a)));
        });
        return valleys;
    }

    private static boolean isCurved(Side side) {
        return side.plane().curve().isPresent();
    }

    /** Whether a facet's side lies along a part of a longer, straight one: a curve turns from it by up to a half right angle. */
    private static boolean isBesideCurve(Side a, Side b) {
        return a.way().dot(b.way()) < -TURNED
                && distance(b.from(), a) < WIDEST
                && distance(b.to(), a) < WIDEST
                && common(a, b) > 0;
    }

    private static Valley valley(Side a, RoofPlane other, List<Side> sides) {
        double cosine = a.frame().normal().dot(other.frame().normal());
        double angle = Math.acos(Math.max(-1, Math.min(1, cosine)));
        RoofEdge edge = new RoofEdge(
                "",
                EdgeKind.VALLEY,
                List.of(a.plane().id(), other.id()),
                a.from(),
                a.to(),
                a.length(),
                OptionalDouble.of(angle),
                OptionalDouble.empty());
        return new Valley(Optional.of(edge), sides);
    }

    /** Whether a side no longer than another runs along most of it, no farther off than a valley gutter is wide. */
    private static boolean isBeside(Side a, Side b) {
        return !a.plane().id().equals(b.plane().id())
                && a.way().dot(b.way()) < -ALONG
                && distance(b.from(), a) < WIDEST
                && distance(b.to(), a) < WIDEST
                && common(a, b) > a.length() / 2;
    }

    private static double distance(Vector3D point, Side line) {
        return point.subtract(line.from()).cross(line.way()).norm();
    }

    /** Length over which b runs beside a, which runs the other way. */
    private static double common(Side a, Side b) {
        double from = Math.max(0, b.to().subtract(a.from()).dot(a.way()));
        double to = Math.min(a.length(), b.from().subtract(a.from()).dot(a.way()));
        return to - from;
    }

    /** The plane on which a side lies, if it rises beyond: looked at in three places. */
    private Optional<RoofPlane> under(Side side) {
        for (int i = 0; i < planes.size(); i++) {
            RoofPlane plane = planes.get(i);
            if (!plane.id().equals(side.plane().id())
                    && side.out().dot(plane.frame().normal()) < -LEAST_FOLD
                    && lies(side, 0.2, i)
                    && lies(side, 0.5, i)
                    && lies(side, 0.8, i)) {
                return Optional.of(plane);
            }
        }
        return Optional.empty();
    }

    private boolean lies(Side side, double share, int plane) {
        Vector3D at = side.from().add(side.way().multiply(share * side.length()));
        Coordinate inPlan = new Coordinate(at.getX(), at.getY());
        return Math.abs(PlanViews.height(planes.get(plane), inPlan) - at.getZ()) < joint
                && plans.get(plane).getEnvelopeInternal().contains(inPlan)
                && SimplePointInAreaLocator.locate(inPlan, plans.get(plane)) != Location.EXTERIOR;
    }
}
