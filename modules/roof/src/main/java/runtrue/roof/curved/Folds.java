package runtrue.roof.curved;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** A section that is no circle: straight lines from fold to fold. At least two points, x rising. */
public record Folds(List<Vector2D> points) implements Section {
    /** Folds nearer than this are one, metres. */
    private static final double SAME = 1e-6;

    public Folds {
        points = List.copyOf(points);
        if (points.size() < 2) {
            throw new IllegalArgumentException("a section needs two points or more, got " + points.size());
        }
    }

    @Override
    public double length() {
        return stations().get(points.size() - 1);
    }

    @Override
    public List<Double> stations() {
        List<Double> stations = new ArrayList<>();
        double v = 0;
        stations.add(v);
        for (int i = 1; i < points.size(); i++) {
            v += points.get(i).distance(points.get(i - 1));
            stations.add(v);
        }
        return stations;
    }

    @Override
    public Vector2D at(double v) {
        int i = partAt(v);
        return points.get(i).add(way(i).multiply(v - stations().get(i)));
    }

    @Override
    public Vector2D tangent(double v) {
        return way(partAt(v));
    }

    @Override
    public double nearest(Vector2D point) {
        List<Double> stations = stations();
        double best = Double.POSITIVE_INFINITY;
        double v = 0;
        for (int i = 0; i + 1 < points.size(); i++) {
            double along = point.subtract(points.get(i)).dot(way(i));
            double low = i == 0 ? Double.NEGATIVE_INFINITY : 0;
            double high = i + 2 == points.size() ? Double.POSITIVE_INFINITY : stations.get(i + 1) - stations.get(i);
            double held = Math.max(low, Math.min(high, along));
            double distance = points.get(i).add(way(i).multiply(held)).distance(point);
            if (distance < best) {
                best = distance;
                v = stations.get(i) + held;
            }
        }
        return v;
    }

    @Override
    public double atSide(double x) {
        int i = 0;
        while (i + 2 < points.size() && points.get(i + 1).getX() < x) {
            i++;
        }
        return stations().get(i) + (x - points.get(i).getX()) / way(i).getX();
    }

    @Override
    public Folds part(double from, double to) {
        Vector2D first = at(from);
        List<Double> stations = stations();
        List<Vector2D> own = new ArrayList<>(List.of(Vector2D.ZERO));
        for (int i = 0; i < points.size(); i++) {
            if (stations.get(i) > from + SAME && stations.get(i) < to - SAME) {
                own.add(points.get(i).subtract(first));
            }
        }
        own.add(at(to).subtract(first));
        return new Folds(own);
    }

    @Override
    public Folds turned() {
        Vector2D end = points.get(points.size() - 1);
        List<Vector2D> own = new ArrayList<>();
        points.forEach(p -> own.add(0, Vector2D.of(end.getX() - p.getX(), p.getY() - end.getY())));
        return new Folds(own);
    }

    private int partAt(double v) {
        List<Double> stations = stations();
        int i = 0;
        while (i + 2 < points.size() && stations.get(i + 1) <= v) {
            i++;
        }
        return i;
    }

    private Vector2D way(int i) {
        return points.get(i + 1).subtract(points.get(i)).normalize();
    }
}
