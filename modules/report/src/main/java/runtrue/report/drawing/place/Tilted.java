package runtrue.report.drawing.place;

import java.util.List;

/**
 * A rectangle on paper at any angle.
 *
 * @param along unit vector of its length
 * @param length whole length, millimetres
 * @param height whole height, millimetres
 */
public record Tilted(Vec centre, Vec along, double length, double height) {
    /** A strip around a straight line. */
    public static Tilted around(Vec from, Vec to, double height) {
        Vec way = to.minus(from);
        return new Tilted(from.towards(to, 0.5), way.unit(), way.length(), height);
    }

    /** Shorter by so much at each end, to nothing at most. */
    public Tilted shortened(double by) {
        return new Tilted(centre, along, Math.max(0, length - 2 * by), height);
    }

    /** A rectangle with level sides. */
    public static Tilted level(Vec centre, double length, double height) {
        return new Tilted(centre, new Vec(1, 0), length, height);
    }

    /** The four corners in order. */
    public List<Vec> corners() {
        Vec half = along.times(length / 2);
        Vec rise = along.turned().times(height / 2);
        return List.of(
                centre.minus(half).minus(rise),
                centre.plus(half).minus(rise),
                centre.plus(half).plus(rise),
                centre.minus(half).plus(rise));
    }

    public Box bounds() {
        return Box.around(corners());
    }

    /** Whether the two share more than a touch: no side of either parts them. */
    public boolean overlaps(Tilted other) {
        return !partedBy(along, other)
                && !partedBy(along.turned(), other)
                && !partedBy(other.along, other)
                && !partedBy(other.along.turned(), other);
    }

    private boolean partedBy(Vec axis, Tilted other) {
        double distance = Math.abs(other.centre.minus(centre).dot(axis));
        return distance >= reach(axis) + other.reach(axis) - 1e-9;
    }

    private double reach(Vec axis) {
        return Math.abs(along.dot(axis)) * length / 2 + Math.abs(along.turned().dot(axis)) * height / 2;
    }
}
