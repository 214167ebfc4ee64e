package runtrue.wind;

import java.util.OptionalDouble;

/**
 * Net pressures square to the roof on one loaded area, in pascals and as the standard gives them (without partial
 * factors).
 *
 * @param suction greatest away from the roof, 0 or more; absent when not available
 * @param pressing greatest on to the roof, 0 or more; absent when not available
 * @param how the figures it came from, or why it is not available: one or more sentences
 * @param source of the coefficient
 */
public record Pressure(OptionalDouble suction, OptionalDouble pressing, String how, WindSource source) {
    /** From the lowest and the highest net pressure, pascals, positive on to the roof. */
    public static Pressure between(double lowest, double highest, String how, WindSource source) {
        return new Pressure(
                OptionalDouble.of(Math.max(0, -lowest)), OptionalDouble.of(Math.max(0, highest)), how, source);
    }

    public static Pressure notAvailable(String why, WindSource source) {
        return new Pressure(OptionalDouble.empty(), OptionalDouble.empty(), "Not available: " + why, source);
    }
}
