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
 * @param up one metre of v on paper
 * @param rings outline and holes in u and v
 * @param outline on paper
 */
public record Patch(PlaneResult plane, Vec origin, Vec across, Vec up, List<List<Vec>> rings, List<Vec> outline) {
    /** The plane as the view shows it. */
    public static Patch of(PlaneResult plane, View view) {
        PlaneResult.Frame frame = plane.frame();
        List<List<Vec>> rings = new ArrayList<>();
        rings.add(inPlane(frame, plane.outline()));
        plane.penetrations().forEach(p -> rings.add(inPlane(frame, p.outline())));
        return new Patch(
                plane,
                view.at(frame.origin()),
                view.way(frame.across().x(), frame.across().y()),
                view.way(frame.up().x(), frame.up().y()),
                rings,
                plane.outline().stream().map(view::at).toList());
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
        return origin.plus(across.times(u)).plus(up.times(v));
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
        Vec moved = place.minus(origin);
        double whole = across.cross(up);
        if (Math.abs(whole) < 1e-9) {
            return false;
        }
        double u = moved.cross(up) / whole;
        double v = across.cross(moved) / whole;
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
        List<Vec> ring = rings.get(0);
        ring = half(ring, new Vec(1, 0), u.fromMetres());
        ring = half(ring, new Vec(-1, 0), -u.toMetres());
        ring = half(ring, new Vec(0, 1), v.fromMetres());
        ring = half(ring, new Vec(0, -1), -v.toMetres());
        return ring.stream().map(p -> at(p.x(), p.y())).toList();
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
