package runtrue.roof.edge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.Interval;
import runtrue.roof.RoofTolerance;
import runtrue.shape.Tolerances;

/**
 * Where two planes meet: stretches of their line of intersection that a side of each lies along, or of two sides that run
 * along each other.
 *
 * @param first a side of the one plane
 * @param second a side of the other
 * @param onFirst stretch of the first side, from its start, metres
 * @param from start of the shared edge, on the line of intersection or the first side
 * @param step how high the first side stands over the second, square to the planes, metres; empty where they meet
 */
record Meeting(
        Side first, Side second, Interval onFirst, Interval onSecond, Vector3D from, Vector3D to, OptionalDouble step) {
    private static final double GREATEST_STEP = RoofTolerance.STEP_HEIGHT.si();

    private static final double STEP_GAP = RoofTolerance.STEP_GAP.si();

    /** Planes nearer to parallel than this have no line of intersection to speak of. */
    private static final double LEAST_ANGLE = Math.sin(RoofTolerance.PLANES_MEET.si());

    /** A side along the line of intersection may be out of line with it this far: sawn or stepped edges. */
    private static final double ALONG = Math.cos(RoofTolerance.EDGE_ALONG.si());

    /** Sides of each list lie in one plane. */
    static List<Meeting> of(List<Side> first, List<Side> second, Tolerances tolerances) {
        Vector3D n = first.get(0).frame().normal();
        Vector3D m = second.get(0).frame().normal();
        Vector3D cross = n.cross(m);
        if (cross.norm() < LEAST_ANGLE) {
            return List.of();
        }
        Vector3D way = cross.normalize();
        Vector3D point = pointOnBoth(n, first.get(0).from(), m, second.get(0).from(), cross);
        List<Meeting> meetings = new ArrayList<>();
        for (Side a : first) {
            Optional<Interval> onLine = along(a, point, way, tolerances.edge());
            for (Side b : onLine.isPresent() ? second : List.<Side>of()) {
                along(b, point, way, tolerances.edge())
                        .flatMap(other -> common(onLine.get(), other, tolerances.joint()))
                        .ifPresent(c -> meetings.add(meeting(a, b, c, point, way)));
            }
        }
        return meetings;
    }

    /**
     * Stretches on which a side of the one plane runs along a side of the other, wherever the planes intersect: planes that
     * fold by next to nothing, or lie a little apart, adjoin all the same. They lie on the first side.
     *
     * @param joint farthest that the sides may be apart, and least length, metres
     */
    static List<Meeting> sideBySide(List<Side> first, List<Side> second, double joint) {
        List<Meeting> meetings = new ArrayList<>();
        for (Side a : first) {
            for (Side b : second) {
                if (a.way().dot(b.way()) < -ALONG) {
                    Interval beside = beside(a, b);
                    Vector3D from = a.from().add(a.way().multiply(beside.from()));
                    Vector3D to = a.from().add(a.way().multiply(beside.to()));
                    if (beside.length() > joint
                            && distance(from, b.from(), b.way()) < joint
                            && distance(to, b.from(), b.way()) < joint) {
                        meetings.add(meeting(a, b, beside, a.from(), a.way()));
                    }
                }
            }
        }
        return meetings;
    }

    /**
     * Stretches on which a side of the one plane runs beside a side of the other at another height, where both planes are
     * flat and parallel. They lie on the higher plane's side.
     *
     * @param joint sheets lie over lesser steps as over a joint; also the least length, metres
     */
    static List<Meeting> steps(List<Side> first, List<Side> second, double joint) {
        Vector3D normal = first.get(0).frame().normal();
        if (normal.cross(second.get(0).frame().normal()).norm() > LEAST_ANGLE) {
            return List.of();
        }
        double up = first.get(0).from().subtract(second.get(0).from()).dot(normal);
        List<Side> higher = up > 0 ? first : second;
        List<Side> lower = up > 0 ? second : first;
        if (Math.abs(up) > GREATEST_STEP + joint) {
            return List.of();
        }
        List<Meeting> meetings = new ArrayList<>();
        for (Side a : higher) {
            for (Side b : lower) {
                if (a.way().dot(b.way()) < -ALONG) {
                    Interval beside = beside(a, b);
                    double height = height(a, b);
                    if (beside.length() > joint
                            && height > joint
                            && height <= GREATEST_STEP
                            && lapped(a, b) < STEP_GAP) {
                        meetings.add(meeting(a, b, beside, a.from(), a.way()).raised(height));
                    }
                }
            }
        }
        return meetings;
    }

    /** Stretch of a side, from its start, along which another runs the opposite way. */
    private static Interval beside(Side a, Side b) {
        double from = Math.max(0, b.to().subtract(a.from()).dot(a.way()));
        double to = Math.min(a.length(), b.from().subtract(a.from()).dot(a.way()));
        return new Interval(from, Math.max(from, to));
    }

    /** How high a side stands over another's plane, square to its own. */
    private static double height(Side a, Side b) {
        return a.middle().subtract(b.middle()).dot(a.frame().normal());
    }

    /** How far two sides are apart, or lap, seen square to the plane: the greater at both ends of the second. */
    private static double lapped(Side a, Side b) {
        return Math.max(
                Math.abs(b.from().subtract(a.from()).dot(a.out())),
                Math.abs(b.to().subtract(a.from()).dot(a.out())));
    }

    /** Distance between the two sides in the middle of the stretch, metres. */
    double gap() {
        double middle = (onFirst.from() + onFirst.to()) / 2;
        return distance(first.from().add(first.way().multiply(middle)), second.from(), second.way());
    }

    /**
     * What is left of the stretch where other edges already take parts of the two sides.
     *
     * @param taken parts of the first side, from its start
     * @param takenOfSecond likewise
     * @param joint parts that overlap by no more do not count, and no shorter rest is left, metres
     */
    List<Meeting> without(List<Interval> taken, List<Interval> takenOfSecond, double joint) {
        List<Interval> gone = new ArrayList<>();
        taken.stream().filter(t -> overlap(t, onFirst) > joint).forEach(t -> gone.add(onLine(first, t)));
        takenOfSecond.stream().filter(t -> overlap(t, onSecond) > joint).forEach(t -> gone.add(onLine(second, t)));
        if (gone.isEmpty()) {
            return List.of(this);
        }
        gone.sort(Comparator.comparingDouble(Interval::from));
        List<Meeting> left = new ArrayList<>();
        double length = from.distance(to);
        double at = 0;
        for (Interval g : gone) {
            addPart(left, at, Math.min(length, g.from()), joint);
            at = Math.max(at, g.to());
        }
        addPart(left, at, length, joint);
        return left;
    }

    private static double overlap(Interval a, Interval b) {
        return Math.min(a.to(), b.to()) - Math.max(a.from(), b.from());
    }

    /** A part of a side as distances from the start of the shared edge. */
    private Interval onLine(Side side, Interval part) {
        Vector3D way = to.subtract(from).normalize();
        double a =
                side.from().add(side.way().multiply(part.from())).subtract(from).dot(way);
        double b =
                side.from().add(side.way().multiply(part.to())).subtract(from).dot(way);
        return new Interval(Math.min(a, b), Math.max(a, b));
    }

    private void addPart(List<Meeting> to, double start, double end, double joint) {
        if (end - start > joint) {
            Vector3D way = this.to.subtract(from).normalize();
            Meeting part = meeting(first, second, new Interval(start, end), from, way);
            to.add(new Meeting(part.first, part.second, part.onFirst, part.onSecond, part.from, part.to, step));
        }
    }

    private Meeting raised(double height) {
        return new Meeting(first, second, onFirst, onSecond, from, to, OptionalDouble.of(height));
    }

    /** The point of both planes that is nearest to the middle between a point of each. */
    private static Vector3D pointOnBoth(Vector3D n, Vector3D p, Vector3D m, Vector3D q, Vector3D cross) {
        // Solved for differences from a point near by, so that no digits are lost.
        Vector3D base = p.add(q).multiply(0.5);
        double a = p.subtract(base).dot(n);
        double b = q.subtract(base).dot(m);
        Vector3D offset =
                m.cross(cross).multiply(a).add(cross.cross(n).multiply(b)).multiply(1 / cross.normSq());
        return base.add(offset);
    }

    /** Extent of a side along the line, if it lies along it. */
    private static Optional<Interval> along(Side side, Vector3D point, Vector3D way, double tolerance) {
        if (Math.abs(side.way().dot(way)) < ALONG
                || distance(side.from(), point, way) > tolerance
                || distance(side.to(), point, way) > tolerance) {
            return Optional.empty();
        }
        double a = side.from().subtract(point).dot(way);
        double b = side.to().subtract(point).dot(way);
        return Optional.of(new Interval(Math.min(a, b), Math.max(a, b)));
    }

    private static double distance(Vector3D p, Vector3D point, Vector3D way) {
        return p.subtract(point).cross(way).norm();
    }

    private static Optional<Interval> common(Interval a, Interval b, double least) {
        double from = Math.max(a.from(), b.from());
        double to = Math.min(a.to(), b.to());
        return to - from > least ? Optional.of(new Interval(from, to)) : Optional.empty();
    }

    private static Meeting meeting(Side a, Side b, Interval common, Vector3D point, Vector3D way) {
        Vector3D from = point.add(way.multiply(common.from()));
        Vector3D to = point.add(way.multiply(common.to()));
        return new Meeting(a, b, on(a, from, to), on(b, from, to), from, to, OptionalDouble.empty());
    }

    private static Interval on(Side side, Vector3D from, Vector3D to) {
        double a = from.subtract(side.from()).dot(side.way());
        double b = to.subtract(side.from()).dot(side.way());
        double low = Math.max(0, Math.min(a, b));
        return new Interval(low, Math.max(low, Math.min(side.length(), Math.max(a, b))));
    }
}
