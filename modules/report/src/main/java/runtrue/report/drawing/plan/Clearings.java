package runtrue.report.drawing.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import runtrue.report.drawing.place.Box;
import runtrue.report.drawing.place.Patch;
import runtrue.report.drawing.place.Vec;

/** Places within a plane where a label has most room: points of a lattice, those farthest from any edge first. */
final class Clearings {
    private static final int LATTICE = 22;

    private Clearings() {}

    static List<Vec> of(Patch patch) {
        record Place(Vec at, double clearance) {}
        Box bounds = Box.around(patch.outline());
        Vec middle = bounds.centre();
        List<Place> places = new ArrayList<>();
        for (int i = 1; i < LATTICE; i++) {
            for (int j = 1; j < LATTICE; j++) {
                Vec at = new Vec(
                        bounds.left() + bounds.width() * i / LATTICE, bounds.top() + bounds.height() * j / LATTICE);
                if (patch.contains(at)) {
                    // Of places with equal room, the one near the middle.
                    double clearance =
                            toOutline(patch, at) - 0.1 * at.minus(middle).length();
                    places.add(new Place(at, clearance));
                }
            }
        }
        return places.stream()
                .sorted(Comparator.comparingDouble(Place::clearance)
                        .reversed()
                        .thenComparingDouble(p -> p.at().x())
                        .thenComparingDouble(p -> p.at().y()))
                .map(Place::at)
                .toList();
    }

    private static double toOutline(Patch patch, Vec at) {
        double nearest = Double.MAX_VALUE;
        List<Vec> ring = patch.outline();
        for (int i = 0; i < ring.size(); i++) {
            nearest = Math.min(nearest, distance(at, ring.get(i), ring.get((i + 1) % ring.size())));
        }
        return nearest;
    }

    private static double distance(Vec at, Vec from, Vec to) {
        Vec way = to.minus(from);
        double square = way.dot(way);
        double share =
                square < 1e-12 ? 0 : Math.max(0, Math.min(1, at.minus(from).dot(way) / square));
        return at.minus(from.towards(to, share)).length();
    }
}
