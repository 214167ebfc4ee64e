package runtrue.result.build;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/** Numbers as the result states them, no negative zero. */
final class Rounded {
    /** A micrometre is finer than any model states. */
    private static final int DECIMALS = 6;

    /** For quantities in any unit: a coefficient of thermal expansion has its first digit at the fifth decimal. */
    private static final int DECIMALS_OF_MEASURES = 9;

    private Rounded() {}

    /** @throws ArithmeticException for NaN and infinity: no stage may hand them on */
    static double of(double value) {
        return rounded(value, DECIMALS);
    }

    static double measure(double value) {
        return rounded(value, DECIMALS_OF_MEASURES);
    }

    private static double rounded(double value, int decimals) {
        if (!Double.isFinite(value)) {
            throw new ArithmeticException("A result cannot state the number " + value);
        }
        return BigDecimal.valueOf(value)
                        .setScale(decimals, RoundingMode.HALF_EVEN)
                        .doubleValue()
                + 0.0;
    }

    static double degrees(double radians) {
        return of(Math.toDegrees(radians));
    }

    /** A compass direction from 0 up to, not including, 360 degrees. */
    static double bearing(double radians) {
        double degrees = degrees(radians) % 360;
        return of(degrees < 0 ? degrees + 360 : degrees) % 360;
    }

    static OptionalDouble of(OptionalDouble value) {
        return value.isPresent() ? OptionalDouble.of(of(value.getAsDouble())) : value;
    }

    static OptionalDouble degrees(OptionalDouble radians) {
        return radians.isPresent() ? OptionalDouble.of(degrees(radians.getAsDouble())) : radians;
    }

    static OptionalDouble bearing(OptionalDouble radians) {
        return radians.isPresent() ? OptionalDouble.of(bearing(radians.getAsDouble())) : radians;
    }
}
