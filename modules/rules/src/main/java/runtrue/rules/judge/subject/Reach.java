package runtrue.rules.judge.subject;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Interval;

/** How far it is from a place within a plane to the plane's outer edges, in its u, v. */
final class Reach {
    private final Coordinate[] ring;

    /** Least distances, metres. */
    record Distances(double up, double down, double side) {}

    Reach(Polygon outline) {
        ring = outline.getExteriorRing().getCoordinates();
    }

    /** From a rectangle; looked at along its sides and its middle lines. */
    Distances from(Interval u, Interval v) {
        double up = Double.POSITIVE_INFINITY;
        double down = Double.POSITIVE_INFINITY;
        double side = Double.POSITIVE_INFINITY;
        for (double share : List.of(0.0, 0.5, 1.0)) {
            double atU = u.from() + share * u.length();
            double atV = v.from() + share * v.length();
            up = Math.min(up, next(crossings(atU, false), v.to()));
            down = Math.min(
                    down, next(crossings(atU, false).stream().map(c -> -c).toList(), -v.from()));
            side = Math.min(side, next(crossings(atV, true), u.to()));
            side = Math.min(
                    side, next(crossings(atV, true).stream().map(c -> -c).toList(), -u.from()));
        }
        return new Distances(up, down, side);
    }

    private static double next(List<Double> crossings, double from) {
        return crossings.stream()
                .flatMapToDouble(DoubleStream::of)
                .map(c -> c - from)
                .filter(d -> d >= -1e-6)
                .map(d -> Math.max(0, d))
                .min()
                .orElse(0);
    }

    /** Where the ring crosses a line of constant u, or of constant v. */
    private List<Double> crossings(double at, boolean level) {
        List<Double> found = new ArrayList<>();
        for (int i = 1; i < ring.length; i++) {
            double a = level ? ring[i - 1].y : ring[i - 1].x;
            double b = level ? ring[i].y : ring[i].x;
            double p = level ? ring[i - 1].x : ring[i - 1].y;
            double q = level ? ring[i].x : ring[i].y;
            if (a == b) {
                continue;
            }
            double share = (at - a) / (b - a);
            if (share >= -1e-9 && share <= 1 + 1e-9) {
                found.add(p + (q - p) * share);
            }
        }
        return found;
    }
}
