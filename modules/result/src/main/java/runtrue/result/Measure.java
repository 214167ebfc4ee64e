package runtrue.result;

/**
 * A number in the unit that people read it in.
 *
 * @param unit symbol, for example {@code mm}, {@code deg}, {@code kPa}; {@code 1} for a plain number
 */
public record Measure(double value, String unit) {}
