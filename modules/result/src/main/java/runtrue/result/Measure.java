package runtrue.result;

import java.util.Locale;
import java.util.Optional;

/**
 * A number in the unit that people read it in.
 *
 * @param unit symbol, for example {@code mm}, {@code deg}, {@code kPa}; {@code 1} for a plain number
 */
public record Measure(double value, String unit) {
    /** Results carry six places; what differs beyond is the same. */
    private static final int HIDDEN = 3;

    private static final int MOST_ZEROS = 9;

    /** Its symbol as people write it, for example {@code m²} for {@code m2}; a plain number has none. */
    public static String symbol(String unit) {
        return switch (unit) {
            case "1" -> "";
            case "deg" -> "°";
            case "um" -> "µm";
            default -> unit.replace("m2", "m²").replace("m3", "m³");
        };
    }

    /** The number with its unit: three places after the point, more for numbers below one, so that four digits count. */
    public String words() {
        return words(places());
    }

    /**
     * The same beside what it is compared with: where rounding would hide that the two differ, as many more digits as show
     * it, or a measure that fails by little would look like its limit.
     */
    public String words(Optional<Measure> beside) {
        boolean hidden = beside.filter(b ->
                        b.value != value && b.unit.equals(unit) && b.words().equals(words()))
                .isPresent();
        return words(places() + (hidden ? HIDDEN : 0));
    }

    private int places() {
        double size = Math.abs(value);
        int zeros = size > 0 && size < 1 ? (int) Math.floor(-Math.log10(size)) : 0;
        return 3 + Math.min(zeros, MOST_ZEROS);
    }

    private String words(int places) {
        String number = String.format(Locale.ROOT, "%." + places + "f", value)
                .replaceAll("0+$", "")
                .replaceAll("\\.$", "");
        String symbol = symbol(unit);
        return number + (symbol.isEmpty() || symbol.equals("°") ? symbol : " " + symbol);
    }
}
