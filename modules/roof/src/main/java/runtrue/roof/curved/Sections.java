package runtrue.roof.curved;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import runtrue.roof.RoofTolerance;

/** Makes sections of the places at which facets begin and end. */
final class Sections {
    private static final double SHARED = RoofTolerance.FACET_JOINT.si();
    private static final double CIRCLE = RoofTolerance.CIRCLE.si();
    private static final double GREATEST_FOLD = RoofTolerance.FOLD_OF_CURVE.si();

    /** Twice the range of directions is there and back; the rest is for rounding. */
    private static final double GREATEST_TURNS = 2.5;

    /** Through fewer points there is always a circle, so that it says nothing. */
    private static final int LEAST_POINTS = 4;

    private Sections() {}

    /**
     * Folds by x: ends of facets that lie together are one. An end that no other facet shares is a cut through a facet,
     * unless it is the first or the last.
     */
    static List<Vector2D> folds(List<Vector2D> ends) {
        List<Vector2D> sorted = new ArrayList<>(ends);
        sorted.sort(Comparator.comparingDouble(Vector2D::getX));
        List<Vector2D> folds = new ArrayList<>();
        List<Vector2D> together = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            together.add(sorted.get(i));
            boolean last = i + 1 == sorted.size();
            if (last || sorted.get(i + 1).getX() - sorted.get(i).getX() > SHARED) {
                if (together.size() > 1 || folds.isEmpty() || last) {
                    folds.add(mean(together));
                }
                together.clear();
            }
        }
        return folds;
    }

    private static Vector2D mean(List<Vector2D> points) {
        Vector2D sum = Vector2D.ZERO;
        for (Vector2D p : points) {
            sum = sum.add(p);
        }
        return sum.multiply(1.0 / points.size());
    }

    /**
     * Whether a section bends one way, or one way and back: through the corners of a surface that is curved both ways it
     * would run up and down from each to the next.
     */
    static boolean isSmooth(List<Vector2D> folds) {
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        double turns = 0;
        double before = Double.NaN;
        for (int i = 0; i + 1 < folds.size(); i++) {
            Vector2D way = folds.get(i + 1).subtract(folds.get(i));
            double angle = Math.atan2(way.getY(), way.getX());
            turns += i == 0 ? 0 : Math.abs(angle - before);
            before = angle;
            least = Math.min(least, angle);
            greatest = Math.max(greatest, angle);
        }
        return turns < GREATEST_TURNS * (greatest - least);
    }

    /** The circle that the folds lie on, if they do and follow each other as closely as facets of a circle would. */
    static Optional<Arc> arc(List<Vector2D> folds, Optional<CircleFit> fit) {
        return fit.filter(c -> folds.size() >= LEAST_POINTS && c.deviation() <= CIRCLE)
                .map(c -> arc(folds, c))
                .filter(Sections::isClose);
    }

    private static Arc arc(List<Vector2D> folds, CircleFit circle) {
        boolean convex = circle.centre().getY() < mean(folds).getY();
        Vector2D first = folds.get(0).subtract(circle.centre());
        double start = Math.atan2(first.getX(), (convex ? 1 : -1) * first.getY());
        Arc open = new Arc(circle.centre(), circle.radius(), convex, start, 0, List.of());
        List<Double> stations = folds.stream().map(open::nearest).toList();
        double length = stations.get(stations.size() - 1);
        return new Arc(circle.centre(), circle.radius(), convex, start, length, stations);
    }

    private static boolean isClose(Arc arc) {
        for (int i = 0; i + 1 < arc.stations().size(); i++) {
            double turn = (arc.stations().get(i + 1) - arc.stations().get(i)) / arc.radius();
            if (turn <= 0 || turn > GREATEST_FOLD) {
                return false;
            }
        }
        return true;
    }
}
