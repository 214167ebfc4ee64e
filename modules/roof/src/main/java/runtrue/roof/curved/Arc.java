package runtrue.roof.curved;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A circular section.
 *
 * @param centre of the circle
 * @param radius metres
 * @param convex whether the roof bends downwards to both sides (a barrel), not upwards (a hanging roof)
 * @param start angle at the line's start, radians, 0 where the tangent is level, rising with x
 * @param length metres
 * @param stations arc lengths of the folds that it was read from
 */
public record Arc(Vector2D centre, double radius, boolean convex, double start, double length, List<Double> stations)
        implements Section {
    /** Stations nearer than this are one, metres. */
    private static final double SAME = 1e-6;

    public Arc {
        stations = List.copyOf(stations);
    }

    private int turn() {
        return convex ? 1 : -1;
    }

    private double angle(double v) {
        return start + v / radius;
    }

    @Override
    public Vector2D at(double v) {
        double angle = angle(v);
        return centre.add(Vector2D.of(radius * Math.sin(angle), turn() * radius * Math.cos(angle)));
    }

    @Override
    public Vector2D tangent(double v) {
        double angle = angle(v);
        return Vector2D.of(Math.cos(angle), -turn() * Math.sin(angle));
    }

    @Override
    public double nearest(Vector2D point) {
        Vector2D from = point.subtract(centre);
        return (Math.atan2(from.getX(), turn() * from.getY()) - start) * radius;
    }

    @Override
    public double atSide(double x) {
        double sine = (x - centre.getX()) / radius;
        return (Math.asin(Math.max(-1, Math.min(1, sine))) - start) * radius;
    }

    @Override
    public Arc part(double from, double to) {
        List<Double> own = new ArrayList<>(List.of(0.0));
        stations.stream().filter(v -> v > from + SAME && v < to - SAME).forEach(v -> own.add(v - from));
        own.add(to - from);
        return new Arc(centre.subtract(at(from)), radius, convex, angle(from), to - from, own);
    }

    @Override
    public Arc turned() {
        Vector2D end = at(length);
        List<Double> own = new ArrayList<>();
        stations.forEach(v -> own.add(0, length - v));
        Vector2D from = Vector2D.of(end.getX() - centre.getX(), centre.getY() - end.getY());
        return new Arc(from, radius, convex, -angle(length), length, own);
    }

    /** Arc length of the place where the tangent is level: the crown of a barrel. May lie outside the line. */
    public double crown() {
        return -start * radius;
    }
}
