package runtrue.report.cover;

import java.util.Locale;
import runtrue.result.Measure;

/** Unit symbols as people write them. */
public final class Units {
    private Units() {}

    /** For example {@code m²} for {@code m2}; a plain number has no symbol. */
    public static String symbol(String unit) {
        return switch (unit) {
            case "1" -> "";
            case "deg" -> "°";
            case "um" -> "µm";
            default -> unit.replace("m2", "m²").replace("m3", "m³");
        };
    }

    /**
     * A number with its unit. With as many digits as it has, at most six after the point: by fewer, a measure that fails by
     * little would look like its limit.
     */
    public static String words(Measure measure) {
        String number = String.format(Locale.ROOT, "%.6f", measure.value())
                .replaceAll("0+$", "")
                .replaceAll("\\.$", "");
        return (number + " " + symbol(measure.unit())).strip();
    }
}
