package runtrue.roof;

/**
 * A value from which on the program takes something for the same, near, large and so on.
 *
 * @param title a few words for people
 * @param value as people read it: metres, degrees, or a bare factor
 */
public record Bound(String title, Unit unit, double value, String reason) {
    /** Of what a bound is. */
    public enum Unit {
        METRE,
        DEGREE,
        FACTOR
    }

    /** In metres, radians, or a bare factor. */
    public double si() {
        return unit == Unit.DEGREE ? Math.toRadians(value) : value;
    }
}
