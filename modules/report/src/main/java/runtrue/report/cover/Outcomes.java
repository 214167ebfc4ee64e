package runtrue.report.cover;

import java.util.function.Function;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.result.Outcome;

/** Outcomes by sign, word and tint, so that none depends on colour alone. */
public final class Outcomes {
    private Outcomes() {}

    public static String words(Outcome outcome) {
        return switch (outcome) {
            case CONFORMS -> "✓ conforms";
            case DOES_NOT_CONFORM -> "✗ does not conform";
            case NOT_ASSESSED -> "? not assessed";
            case CONCEDED -> "△ conceded";
        };
    }

    public static Look look(Outcome outcome) {
        return switch (outcome) {
            case CONFORMS -> Look.CONFORMS;
            case DOES_NOT_CONFORM -> Look.DOES_NOT_CONFORM;
            case NOT_ASSESSED -> Look.NOT_ASSESSED;
            case CONCEDED -> Look.CONCEDED;
        };
    }

    /** Of a bar, 0xRRGGBB. */
    static int colour(Outcome outcome) {
        return switch (outcome) {
            case CONFORMS -> 0x4E8A54;
            case DOES_NOT_CONFORM -> 0xB3392F;
            case NOT_ASSESSED -> 0xD9A514;
            case CONCEDED -> 0x6A62A8;
        };
    }

    /** A column that states one outcome a row. */
    public static <T> Column<T> column(Function<T, Outcome> outcome) {
        return new Column<>("Outcome", "", 13, false, row -> cell(outcome.apply(row)));
    }

    static Cell cell(Outcome outcome) {
        return Cell.of(words(outcome), look(outcome));
    }
}
