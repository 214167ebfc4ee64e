package runtrue.samples.ifc;

/** A point or direction: metres, right-handed, Z up. */
public record Vec(double x, double y, double z) {
    public static final Vec ZERO = new Vec(0, 0, 0);
    public static final Vec X = new Vec(1, 0, 0);
    public static final Vec Y = new Vec(0, 1, 0);
    public static final Vec Z = new Vec(0, 0, 1);

    public Vec plus(Vec other) {
        return new Vec(x + other.x, y + other.y, z + other.z);
    }

    public Vec minus(Vec other) {
        return plus(other.times(-1));
    }

    public Vec times(double factor) {
        return new Vec(x * factor, y * factor, z * factor);
    }

    public Vec cross(Vec other) {
        return new Vec(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    public double length() {
        return Math.sqrt(x * x + y * y + z * z);
    }

    /** The same direction, one metre long. Not for the zero vector. */
    public Vec unit() {
        return times(1 / length());
    }
}
