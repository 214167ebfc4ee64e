package runtrue.roof;

/** A closed stretch of one axis, metres. */
public record Interval(double from, double to) {
    public double length() {
        return to - from;
    }

    public boolean contains(double value) {
        return from <= value && value <= to;
    }
}
