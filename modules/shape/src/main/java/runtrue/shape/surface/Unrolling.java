package runtrue.shape.surface;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Fineness;

/**
 * Lays the loops of a face out on the plane of its surface's parameters. Each place goes next to the one before it, so
 * that a loop which crosses a seam keeps its shape, and one that runs round the surface does not close.
 */
final class Unrolling {
    private static final double SAME = 1e-9;

    private final Surface surface;
    private final List<Pole> poles = new ArrayList<>(2);

    Unrolling(Surface surface, Fineness fineness) {
        this.surface = surface;
        double tiny = FaceNet.SAME_POINTS * fineness.point();
        for (boolean upper : new boolean[] {false, true}) {
            surface.pole(upper).ifPresent(v -> poles.add(new Pole(upper, v, surface.at(0, v), tiny)));
        }
    }

    private record Pole(boolean upper, double v, Vector3D place, double tiny) {
        boolean at(Vector3D other) {
            return place.distance(other) <= tiny;
        }
    }

    /**
     * A loop laid out; after its last node comes the first one again, so many laps farther on.
     */
    record Laid(List<Node> nodes, int lapsU, int lapsV) {
        Laid reversed() {
            List<Node> result = new ArrayList<>(nodes.size());
            for (int i = nodes.size() - 1; i >= 0; i--) {
                result.add(nodes.get(i));
            }
            return new Laid(result, -lapsU, -lapsV);
        }

        int laps(int axis) {
            return axis == 0 ? lapsU : lapsV;
        }
    }

    /**
     * @param points numbers of the corners, counter-clockwise about the surface's own normal
     * @param places the same, in file units
     */
    Laid laid(int[] points, Vector3D[] places) {
        int first = 0;
        while (first < points.length && poleAt(places[first]) != null) {
            first++;
        }
        if (first == points.length) {
            throw new ShapeException("a loop lies at one point");
        }
        Place start = surface.nearest(places[first], null);
        Place last = start;
        List<Node> nodes = new ArrayList<>(points.length + 2);
        nodes.add(new Node(start.u(), start.v(), points[first]));
        Pole crossed = null;
        int atPole = -1;
        for (int i = 1; i <= points.length; i++) {
            int k = (first + i) % points.length;
            Pole pole = poleAt(places[k]);
            if (pole != null) {
                crossed = pole;
                atPole = points[k];
                continue;
            }
            Place next = i == points.length ? start : surface.nearest(places[k], last);
            next = new Place(beside(0, next.u(), last.u()), beside(1, next.v(), last.v()));
            if (crossed != null) {
                next = new Place(acrossPole(last.u(), next.u(), crossed), next.v());
                addPole(last.u(), next.u(), crossed.v(), atPole, nodes);
                crossed = null;
            }
            if (i < points.length) {
                nodes.add(new Node(next.u(), next.v(), points[k]));
            }
            last = next;
        }
        return new Laid(nodes, laps(0, last.u() - start.u()), laps(1, last.v() - start.v()));
    }

    private int laps(int axis, double way) {
        double period = surface.period(axis);
        return period > 0 ? (int) Math.round(way / period) : 0;
    }

    private double beside(int axis, double parameter, double last) {
        double period = surface.period(axis);
        return period > 0 ? parameter - period * Math.round((parameter - last) / period) : parameter;
    }

    private @Nullable Pole poleAt(Vector3D place) {
        return poles.stream().filter(pole -> pole.at(place)).findFirst().orElse(null);
    }

    /** The face lies to the left of its loop: at the upper pole the loop goes back round the axis, at the lower one on. */
    private double acrossPole(double from, double to, Pole pole) {
        double period = surface.period(0);
        if (period == 0) {
            return to;
        }
        double way = (to - from) % period;
        if (pole.upper()) {
            return from + (way > -SAME * period ? way - period : way);
        }
        return from + (way < SAME * period ? way + period : way);
    }

    /** One point of the surface, but a line of the parameters: nodes along it, so that facets keep to their columns. */
    private void addPole(double from, double to, double v, int point, List<Node> nodes) {
        nodes.add(new Node(from, v, point));
        boolean rising = to >= from;
        Window window = new Window(Math.min(from, to), Math.max(from, to), v, v);
        int steps = (int) Math.ceil(window.u1() == window.u0() || surface.period(0) == 0 ? 1 : columns(window));
        double[] u = Stations.even(window.u0(), window.u1(), steps);
        for (int i = 1; i + 1 < u.length; i++) {
            nodes.add(new Node(u[rising ? i : u.length - 1 - i], v, point));
        }
        if (to != from) {
            nodes.add(new Node(to, v, point));
        }
    }

    private double columns(Window window) {
        return 12 * (window.u1() - window.u0()) / surface.period(0);
    }
}
