package runtrue.report.drawing.place;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import runtrue.result.Direction;
import runtrue.result.PlaneResult;
import runtrue.result.Point;

/**
 * A roof plane on paper, with its own axes: u across the fall, v up the fall, metres.
 *
 * @param plane as the result has it
 * @param origin of the axes on paper
 * @param across one metre of u on paper
 * @param up one metre up the fall on paper; half-way along the arc of a curved plane
 * @param bend of a curved plane: pairs of v and how many {@code up} from the origin that is; empty for flat ones
 * @param rings outline and holes in u and v
 * @param outline on paper
 */
public record Patch(
        PlaneResult plane, Vec origin, Vec across, Vec up, List<Vec> bend, List<List<Vec>> rings, List<Vec> outline) {
    /** The plane as the view shows it. */
    public static Patch of(PlaneResult plane, View view) {
        PlaneResult.Frame frame = plane.frame();
        Vec origin = view.at(frame.origin());
        Vec across = view.way(frame.across().x(), frame.across().y());
        Vec up = view.way(frame.up().x(), frame.up().y());
        List<Vec> outline = plane.outline().stream().map(view::at).toList();
        List<Vec> bend = plane.curve()
                .map(curve -> curve.stations().stream()
                        .map(s -> new Vec(
                                s.vMetres(),
                                shares(view.at(s.point()), origin, across, up).y()))
                        .toList())
                .orElse(List.of());
        List<List<Vec>> rings = new ArrayList<>();
        if (bend.isEmpty()) {
            rings.add(inPlane(frame, plane.outline()));
            plane.penetrations().forEach(p -> rings.add(inPlane(frame, p.outline())));
        } else {
            rings.add(developed(outline, origin, across, up, bend));
            plane.penetrations()
                    .forEach(p -> rings.add(
                            developed(p.outline().stream().map(view::at).toList(), origin, across, up, bend)));
        }
        return new Patch(plane, origin, across, up, bend, rings, outline);
    }

    /** How many of each axis from the origin a place on paper is. */
    private static Vec shares(Vec place, Vec origin, Vec across, Vec up) {
        Vec moved = place.minus(origin);
        double whole = across.cross(up);
        return new Vec(moved.cross(up) / whole, across.cross(moved) / whole);
    }

    private static List<Vec> developed(List<Vec> ring, Vec origin, Vec across, Vec up, List<Vec> bend) {
        return ring.stream()
                .map(p -> shares(p, origin, across, up))
                .map(p -> new Vec(p.x(), straightened(bend, p.y())))
                .toList();
    }

    private static double straightened(List<Vec> bend, double t) {
        return interpolated(bend.stream().map(b -> new Vec(b.y(), b.x())).toList(), t);
    }

    /** The second value at a first one, on straight lines between pairs; the outer lines go on. */
    private static double interpolated(List<Vec> pairs, double at) {
        int i = 1;
        while (i < pairs.size() - 1 && pairs.get(i).x() < at) {
            i++;
        }
        Vec a = pairs.get(i - 1);
        Vec b = pairs.get(i);
        return a.y() + (b.y() - a.y()) * (at - a.x()) / (b.x() - a.x());
    }

    private static List<Vec> inPlane(PlaneResult.Frame frame, List<Point> ring) {
        return ring.stream()
                .map(p -> new Vec(along(frame.across(), frame.origin(), p), along(frame.up(), frame.origin(), p)))
                .toList();
    }

    private static double along(Direction axis, Point from, Point to) {
        return axis.x() * (to.xMetres() - from.xMetres())
                + axis.y() * (to.yMetres() - from.yMetres())
                + axis.z() * (to.zMetres() - from.zMetres());
    }

    /** On paper. */
    public Vec at(double u, double v) {
        double t = bend.isEmpty() ? v : interpolated(bend, v);
        return origin.plus(across.times(u)).plus(up.times(t));
    }

    /** Stretches of v within the plane at one u, from low to high, holes left out: pairs of from and to. */
    public List<double[]> alongFall(double u) {
        return stretches(
                rings.stream().flatMapToDouble(r -> crossings(r, u)).sorted().toArray());
    }

    private static DoubleStream crossings(List<Vec> ring, double u) {
        DoubleStream.Builder found = DoubleStream.builder();
        for (int i = 0; i < ring.size(); i++) {
            Vec a = ring.get(i);
            Vec b = ring.get((i + 1) % ring.size());
            if (a.x() > u != b.x() > u) {
                found.add(a.y() + (b.y() - a.y()) * (u - a.x()) / (b.x() - a.x()));
            }
        }
        return found.build();
    }

    private static List<double[]> stretches(double[] crossings) {
        List<double[]> stretches = new ArrayList<>();
        for (int i = 0; i + 1 < crossings.length; i += 2) {
            stretches.add(new double[] {crossings[i], crossings[i + 1]});
        }
        return stretches;
    }

    /** Whether a place on paper lies within the plane and in no hole. */
    public boolean contains(Vec place) {
        boolean inside = false;
        if (Math.abs(across.cross(up)) < 1e-9) {
            return false;
        }
        Vec shares = shares(place, origin, across, up);
        double u = shares.x();
        double v = bend.isEmpty() ? shares.y() : straightened(bend, shares.y());
        for (List<Vec> ring : rings) {
            inside ^= crossings(ring, u).filter(c -> c > v).count() % 2 == 1;
        }
        return inside;
    }

    /** Whether all of a rectangle lies within the plane, as far as its corners and the middles of its sides tell. */
    public boolean contains(Tilted box) {
        List<Vec> corners = box.corners();
        for (int i = 0; i < 4; i++) {
            Vec corner = corners.get(i);
            if (!contains(corner) || !contains(corner.towards(corners.get((i + 1) % 4), 0.5))) {
                return false;
            }
        }
        return true;
    }

    /** The part of the outline within a rectangle of u and v, on paper; holes are not taken off. */
    public List<Vec> clipped(PlaneResult.Range u, PlaneResult.Range v) {
        return clippedRing(u, v).stream().map(p -> at(p.x(), p.y())).toList();
    }

    /** The same in u and v. */
    public List<Vec> clippedRing(PlaneResult.Range u, PlaneResult.Range v) {
        List<Vec> ring = rings.get(0);
        ring = half(ring, new Vec(1, 0), u.fromMetres());
        ring = half(ring, new Vec(-1, 0), -u.toMetres());
        ring = half(ring, new Vec(0, 1), v.fromMetres());
        return half(ring, new Vec(0, -1), -v.toMetres());
    }

    /** What of a ring lies where the coordinate along {@code axis} is at least {@code least}. */
    private static List<Vec> half(List<Vec> ring, Vec axis, double least) {
        List<Vec> kept = new ArrayList<>();
        for (int i = 0; i < ring.size(); i++) {
            Vec a = ring.get(i);
            Vec b = ring.get((i + 1) % ring.size());
            double da = a.dot(axis) - least;
            double db = b.dot(axis) - least;
            if (da >= 0) {
                kept.add(a);
            }
            if (da >= 0 != db >= 0) {
                kept.add(a.towards(b, da / (da - db)));
            }
        }
        return kept;
    }
}
