package runtrue.report.drawing.place;

import java.util.Collection;

/** A rectangle on paper with level sides, millimetres. */
public record Box(double left, double top, double right, double bottom) {
    /** Around points; there must be at least one. */
    public static Box around(Collection<Vec> points) {
        double left = points.stream().mapToDouble(Vec::x).min().orElseThrow();
        double top = points.stream().mapToDouble(Vec::y).min().orElseThrow();
        double right = points.stream().mapToDouble(Vec::x).max().orElseThrow();
        double bottom = points.stream().mapToDouble(Vec::y).max().orElseThrow();
        return new Box(left, top, right, bottom);
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }

    public Vec centre() {
        return new Vec((left + right) / 2, (top + bottom) / 2);
    }

    /** Larger by so much on every side. */
    public Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    public boolean contains(Vec point) {
        return point.x() >= left && point.x() <= right && point.y() >= top && point.y() <= bottom;
    }

    public boolean touches(Box other) {
        return left <= other.right && other.left <= right && top <= other.bottom && other.top <= bottom;
    }
}
