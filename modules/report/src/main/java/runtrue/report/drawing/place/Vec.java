package runtrue.report.drawing.place;

/** A place or a way on paper, millimetres, X right and Y down. */
public record Vec(double x, double y) {
    public Vec plus(Vec other) {
        return new Vec(x + other.x, y + other.y);
    }

    public Vec minus(Vec other) {
        return new Vec(x - other.x, y - other.y);
    }

    public Vec times(double factor) {
        return new Vec(x * factor, y * factor);
    }

    public double dot(Vec other) {
        return x * other.x + y * other.y;
    }

    /** Positive where {@code other} lies clockwise of this as seen on the page. */
    public double cross(Vec other) {
        return x * other.y - y * other.x;
    }

    public double length() {
        return Math.hypot(x, y);
    }

    /** Of length 1; to the right where there is no length. */
    public Vec unit() {
        double length = length();
        return length < 1e-9 ? new Vec(1, 0) : times(1 / length);
    }

    /** A quarter turn clockwise as seen on the page. */
    public Vec turned() {
        return new Vec(-y, x);
    }

    /** Part of the way to another place. */
    public Vec towards(Vec other, double share) {
        return plus(other.minus(this).times(share));
    }

    /** The same way or its reverse, whichever text along it can be read from below or from the right. */
    public Vec readable() {
        boolean upsideDown = x < -1e-6 || (Math.abs(x) <= 1e-6 && y > 0);
        return upsideDown ? times(-1) : this;
    }

    /** Clockwise from the right, degrees. */
    public double degrees() {
        return Math.toDegrees(Math.atan2(y, x));
    }
}
