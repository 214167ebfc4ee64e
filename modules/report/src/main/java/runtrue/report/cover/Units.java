package runtrue.report.cover;

import runtrue.result.Measure;

/** Unit symbols as people write them. */
public final class Units {
    private Units() {}

    /** For example {@code m²} for {@code m2}; a plain number has no symbol. */
    public static String symbol(String unit) {
        return Measure.symbol(unit);
    }
}
