package runtrue.shape.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToIntFunction;
import org.locationtech.jts.algorithm.PointLocation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Location;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Fineness;
import runtrue.shape.surface.Unrolling.Laid;

/** The loops of one face as an outline and holes in the plane of the parameters: start with {@link #of}. */
final class Rings {
    private final Surface surface;
    private final Fineness fineness;
    private final ToIntFunction<Place> newPoint;

    /**
     * @param newPoint makes a point of the body from a place on the surface, for seams that no edge of the file runs along
     */
    Rings(Surface surface, Fineness fineness, ToIntFunction<Place> newPoint) {
        this.surface = surface;
        this.fineness = fineness;
        this.newPoint = newPoint;
    }

    /** The outline first, counter-clockwise; then holes. No loops mean the whole of a closed surface. */
    List<List<Node>> of(List<Laid> loops) {
        if (loops.isEmpty()) {
            return List.of(whole(new Window(0, surface.period(0), Double.NaN, Double.NaN)));
        }
        List<List<Node>> closed = new ArrayList<>();
        List<Laid> round = new ArrayList<>();
        for (Laid loop : loops) {
            if (loop.lapsU() == 0 && loop.lapsV() == 0) {
                closed.add(loop.nodes());
            } else {
                round.add(loop);
            }
        }
        closed.sort(Comparator.comparingDouble(ring -> -Math.abs(Node.area(ring))));
        List<Node> outline = round.isEmpty() ? closed.remove(0) : joined(round);
        List<List<Node>> rings = new ArrayList<>();
        rings.add(outline);
        for (List<Node> hole : closed) {
            rings.add(within(outline, hole));
        }
        return rings;
    }

    private List<Node> joined(List<Laid> round) {
        Laid first = round.get(0);
        int axis = first.lapsU() != 0 ? 0 : 1;
        if (round.size() == 1) {
            return upToPole(first);
        }
        if (round.size() != 2 || first.laps(1 - axis) != 0) {
            throw new ShapeException(round.size() + " loops run round a surface, which is not understood");
        }
        Laid second = round.get(1);
        if (Math.abs(first.laps(axis)) != 1 || Math.abs(second.laps(axis)) != 1 || second.laps(1 - axis) != 0) {
            throw new ShapeException("its loops run round their surface each another way");
        }
        boolean swap = first.laps(axis) < 0 && second.laps(axis) > 0;
        Laid forward = swap ? second : first;
        Laid back = swap ? first : second;
        return band(
                forward.laps(axis) > 0 ? forward : forward.reversed(),
                back.laps(axis) < 0 ? back : back.reversed(),
                axis);
    }

    /** Between a loop that runs forward round an axis and one that runs back. */
    private List<Node> band(Laid forward, Laid back, int axis) {
        double lap = surface.period(axis);
        double other = surface.period(1 - axis);
        double shift = 0;
        if (other > 0) {
            // The face lies to the left: towards higher v for a way along u, towards lower u for a way along v.
            double ahead = (mean(back, 1 - axis) - mean(forward, 1 - axis)) * (axis == 0 ? 1 : -1);
            shift = (axis == 0 ? -1 : 1) * other * Math.floor(ahead / other);
        }
        int from = extreme(forward, 1 - axis, mean(back, 1 - axis) + shift > mean(forward, 1 - axis));
        List<Node> ring = new ArrayList<>(run(forward, from, axis, lap));
        Node end = ring.get(ring.size() - 1);
        int to = nearest(back, axis, end.on(axis), lap);
        Node meeting = back.nodes().get(to);
        double along = lap * Math.round((end.on(axis) - meeting.on(axis)) / lap);
        List<Node> far = new ArrayList<>();
        for (Node node : run(back, to, axis, -lap)) {
            far.add(axis == 0 ? node.moved(along, shift) : node.moved(shift, along));
        }
        List<Node> seam = seam(end, far.get(0), axis);
        ring.addAll(seam);
        ring.addAll(far);
        addBack(seam, axis, -lap, ring);
        return ring;
    }

    /** A loop from one of its nodes on, with that node again at the end, a lap farther. */
    private static List<Node> run(Laid loop, int from, int axis, double lap) {
        int n = loop.nodes().size();
        List<Node> result = new ArrayList<>(n + 1);
        for (int i = 0; i <= n; i++) {
            double on = from + i >= n ? lap : 0;
            result.add(loop.nodes().get((from + i) % n).moved(axis == 0 ? on : 0, axis == 0 ? 0 : on));
        }
        return result;
    }

    private static void addBack(List<Node> seam, int axis, double lap, List<Node> ring) {
        for (int i = seam.size() - 1; i >= 0; i--) {
            ring.add(seam.get(i).moved(axis == 0 ? lap : 0, axis == 0 ? 0 : lap));
        }
    }

    private static double mean(Laid loop, int axis) {
        return loop.nodes().stream().mapToDouble(n -> n.on(axis)).average().orElse(0);
    }

    /** The node farthest to one side, so that a straight seam from it does not cross the loop. */
    private static int extreme(Laid loop, int axis, boolean most) {
        int best = 0;
        for (int i = 1; i < loop.nodes().size(); i++) {
            double on = loop.nodes().get(i).on(axis);
            double sofar = loop.nodes().get(best).on(axis);
            if (most ? on > sofar : on < sofar) {
                best = i;
            }
        }
        return best;
    }

    private static int nearest(Laid loop, int axis, double to, double lap) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < loop.nodes().size(); i++) {
            double off = Math.abs(Math.IEEEremainder(loop.nodes().get(i).on(axis) - to, lap));
            if (off < least) {
                least = off;
                best = i;
            }
        }
        return best;
    }

    /** New nodes between two, as many as a chord along the other axis needs. */
    private List<Node> seam(Node from, Node to, int axis) {
        Window window = Window.of(List.of(from, to));
        int steps = surface.stations(1 - axis, window, fineness).length - 1;
        List<Node> result = new ArrayList<>();
        for (int i = 1; i < steps; i++) {
            double share = (double) i / steps;
            double u = from.u() + share * (to.u() - from.u());
            double v = from.v() + share * (to.v() - from.v());
            result.add(new Node(u, v, newPoint.applyAsInt(new Place(u, v))));
        }
        return result;
    }

    /** A loop round a dome: the face ends in the pole on the loop's left. */
    private List<Node> upToPole(Laid loop) {
        OptionalDouble upper = surface.pole(true);
        OptionalDouble lower = surface.pole(false);
        boolean up = loop.lapsU() > 0 ? upper.isPresent() : lower.isEmpty();
        OptionalDouble pole = up ? upper : lower;
        if (Math.abs(loop.lapsU()) != 1 || loop.lapsV() != 0 || pole.isEmpty()) {
            throw new ShapeException("a loop runs round a surface that is open at the other end");
        }
        double lap = loop.lapsU() * surface.period(0);
        List<Node> ring = run(loop, extreme(loop, 1, up), 0, lap);
        Node end = ring.get(ring.size() - 1);
        double v = pole.getAsDouble();
        List<Node> seam = seam(end, new Node(end.u(), v, -1), 0);
        ring = new ArrayList<>(ring);
        ring.addAll(seam);
        int point = newPoint.applyAsInt(new Place(end.u(), v));
        for (double u : Stations.even(end.u(), end.u() - lap, loop.nodes().size())) {
            ring.add(new Node(u, v, point));
        }
        addBack(seam, 0, -lap, ring);
        return ring;
    }

    /** A whole rectangle of the parameters; NaN for a range that the surface itself ends. */
    List<Node> whole(Window given) {
        Window own = surface.bounds();
        double[] u = range(0, given.u0(), given.u1(), own);
        double[] v = range(1, given.v0(), given.v1(), own);
        Window window = new Window(u[0], u[1], v[0], v[1]);
        double[] across = surface.stations(0, window, fineness);
        double[] up = surface.stations(1, window, fineness);
        Sides sides = new Sides(across, up);
        List<Node> ring = new ArrayList<>();
        for (int i = 0; i < across.length - 1; i++) {
            ring.add(sides.node(i, 0));
        }
        for (int k = 0; k < up.length - 1; k++) {
            ring.add(sides.node(across.length - 1, k));
        }
        for (int i = across.length - 1; i > 0; i--) {
            ring.add(sides.node(i, up.length - 1));
        }
        for (int k = up.length - 1; k > 0; k--) {
            ring.add(sides.node(0, k));
        }
        return ring;
    }

    private double[] range(int axis, double from, double to, Window own) {
        double period = surface.period(axis);
        double low = Double.isNaN(from) ? own.low(axis) : from;
        double high = Double.isNaN(to) ? own.high(axis) : to;
        if (Double.isInfinite(low) && period > 0) {
            low = 0;
            high = period;
        }
        if (Double.isInfinite(low) || Double.isInfinite(high) || !(high > low)) {
            throw new ShapeException("it has no end, and no loop that trims it");
        }
        return new double[] {low, high};
    }

    /** Points on the four sides of a rectangle: one where sides meet in a seam or shrink to a pole. */
    private final class Sides {
        private final double[] u;
        private final double[] v;
        private final int[][] points;
        private final boolean[] wraps = new boolean[2];
        private final boolean[] shrinks = new boolean[2];

        Sides(double[] u, double[] v) {
            this.u = u;
            this.v = v;
            this.points = new int[4][];
            for (int side = 0; side < 4; side++) {
                points[side] = new int[side < 2 ? u.length : v.length];
                Arrays.fill(points[side], -1);
            }
            wraps[0] = same(surface.period(0), u[u.length - 1] - u[0]);
            wraps[1] = same(surface.period(1), v[v.length - 1] - v[0]);
            OptionalDouble lower = surface.pole(false);
            OptionalDouble upper = surface.pole(true);
            shrinks[0] = lower.isPresent() && lower.getAsDouble() == v[0];
            shrinks[1] = upper.isPresent() && upper.getAsDouble() == v[v.length - 1];
        }

        private boolean same(double period, double way) {
            return period > 0 && Math.abs(period - way) <= 1e-9 * period;
        }

        Node node(int i, int k) {
            return new Node(u[i], v[k], point(i, k));
        }

        private int point(int i, int k) {
            int column = wraps[0] && i == u.length - 1 ? 0 : i;
            int row = wraps[1] && k == v.length - 1 ? 0 : k;
            if ((row == 0 && shrinks[0]) || (row == v.length - 1 && shrinks[1])) {
                column = 0;
            }
            boolean level = row == 0 || row == v.length - 1;
            int side = level ? (row == 0 ? 0 : 1) : (column == 0 ? 2 : 3);
            int at = level ? column : row;
            if (points[side][at] < 0) {
                points[side][at] = newPoint.applyAsInt(new Place(u[column], v[row]));
            }
            return points[side][at];
        }
    }

    /** A hole moved by whole laps to where it lies within the outline. */
    private List<Node> within(List<Node> outline, List<Node> hole) {
        Coordinate[] ring = coordinates(outline);
        for (int i = -2; i <= 2; i++) {
            for (int k = -2; k <= 2; k++) {
                double du = i * surface.period(0);
                double dv = k * surface.period(1);
                Node first = hole.get(0).moved(du, dv);
                if (PointLocation.locateInRing(new Coordinate(first.u(), first.v()), ring) != Location.EXTERIOR) {
                    return hole.stream().map(n -> n.moved(du, dv)).toList();
                }
            }
        }
        return hole;
    }

    static Coordinate[] coordinates(List<Node> ring) {
        Coordinate[] result = new Coordinate[ring.size() + 1];
        for (int i = 0; i < ring.size(); i++) {
            result[i] = new Coordinate(ring.get(i).u(), ring.get(i).v());
        }
        result[ring.size()] = result[0];
        return result;
    }
}
