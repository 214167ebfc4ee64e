package runtrue.rules.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Exponents of the base units that a quantity is made of. Angle counts as a base of its own, so that a pitch cannot be
 * compared with a ratio by mistake.
 */
public record Dimension(int length, int mass, int time, int temperature, int angle, int current) {
    public static final Dimension NONE = new Dimension(0, 0, 0, 0, 0, 0);
    public static final Dimension LENGTH = new Dimension(1, 0, 0, 0, 0, 0);
    public static final Dimension AREA = new Dimension(2, 0, 0, 0, 0, 0);
    public static final Dimension MASS = new Dimension(0, 1, 0, 0, 0, 0);
    public static final Dimension TEMPERATURE = new Dimension(0, 0, 0, 1, 0, 0);
    public static final Dimension ANGLE = new Dimension(0, 0, 0, 0, 1, 0);
    public static final Dimension FORCE = new Dimension(1, 1, -2, 0, 0, 0);
    public static final Dimension PRESSURE = new Dimension(-1, 1, -2, 0, 0, 0);
    public static final Dimension VELOCITY = new Dimension(1, 0, -1, 0, 0, 0);
    /** Volume of water in a time. */
    public static final Dimension FLOW = new Dimension(3, 0, -1, 0, 0, 0);
    /** Electric. */
    public static final Dimension POTENTIAL = new Dimension(2, 1, -3, 0, 0, -1);

    public Dimension times(Dimension other) {
        return new Dimension(
                length + other.length,
                mass + other.mass,
                time + other.time,
                temperature + other.temperature,
                angle + other.angle,
                current + other.current);
    }

    public Dimension per(Dimension other) {
        return new Dimension(
                length - other.length,
                mass - other.mass,
                time - other.time,
                temperature - other.temperature,
                angle - other.angle,
                current - other.current);
    }

    /** The dimension of the square root; empty where an exponent is odd. */
    public Optional<Dimension> root() {
        boolean even =
                IntStream.of(length, mass, time, temperature, angle, current).allMatch(exponent -> exponent % 2 == 0);
        return even
                ? Optional.of(new Dimension(length / 2, mass / 2, time / 2, temperature / 2, angle / 2, current / 2))
                : Optional.empty();
    }

    /** For messages: {@code length}, {@code pressure}, {@code plain number}, or the base units as {@code kg m-2}. */
    public String label() {
        if (equals(NONE)) {
            return "plain number";
        } else if (equals(LENGTH)) {
            return "length";
        } else if (equals(AREA)) {
            return "area";
        } else if (equals(MASS)) {
            return "mass";
        } else if (equals(ANGLE)) {
            return "angle";
        } else if (equals(PRESSURE)) {
            return "pressure";
        } else if (equals(FORCE)) {
            return "force";
        } else if (equals(TEMPERATURE)) {
            return "temperature difference";
        } else if (equals(VELOCITY)) {
            return "velocity";
        } else if (equals(FLOW)) {
            return "flow";
        } else if (equals(POTENTIAL)) {
            return "electric potential";
        }
        return baseUnits();
    }

    private String baseUnits() {
        List<String> parts = new ArrayList<>();
        add(parts, "kg", mass);
        add(parts, "m", length);
        add(parts, "s", time);
        add(parts, "K", temperature);
        add(parts, "rad", angle);
        add(parts, "A", current);
        return String.join(" ", parts);
    }

    private static void add(List<String> parts, String symbol, int exponent) {
        if (exponent != 0) {
            parts.add(exponent == 1 ? symbol : symbol + exponent);
        }
    }
}
