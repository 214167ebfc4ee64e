package runtrue.report.cover;

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
}
