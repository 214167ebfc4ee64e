package runtrue.result;

import java.util.Locale;

/**
 * A number in the unit that people read it in.
 *
 * @param unit symbol, for example {@code mm}, {@code deg}, {@code kPa}; {@code 1} for a plain number
 */
public record Measure(double value, String unit) {
    /** Its symbol as people write it, for example {@code m²} for {@code m2}; a plain number has none. */
    public static String symbol(String unit) {
        return switch (unit) {
            case "1" -> "";
            case "deg" -> "°";
            case "um" -> "µm";
            default -> unit.replace("m2", "m²").replace("m3", "m³");
        };
    }

    /**
     * The number with its unit. With as many digits as it has, at most six after the point: by fewer, a measure that fails
     * by little would look like its limit.
     */
    public String words() {
        String number =
                String.format(Locale.ROOT, "%.6f", value).replaceAll("0+$", "").replaceAll("\\.$", "");
        return (number + " " + symbol(unit)).strip();
    }
}
