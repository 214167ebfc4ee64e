package runtrue.rules;

/**
 * A number with the unit that people read it in.
 *
 * @param si value in SI (metre, radian, pascal, newton, kilogram, kelvin, 1)
 * @param unit symbol for output, for example {@code mm}, {@code deg}, {@code kPa}, {@code 1}
 */
public record Quantity(double si, String unit) {}
