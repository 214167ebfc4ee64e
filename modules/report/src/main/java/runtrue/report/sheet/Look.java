package runtrue.report.sheet;

/** How a cell looks. Each becomes one style of the workbook, shared by all its cells. */
public enum Look {
    TEXT,
    /** Sentences: wrapped. */
    WRAPPED,
    COUNT("#,##0"),
    /** Lengths in metres. */
    METRES("#,##0.000"),
    MILLIMETRES("#,##0.0"),
    SQUARE_METRES("#,##0.00"),
    DEGREES("0.00"),
    /** Quantities in any unit. */
    DECIMAL("#,##0.00"),
    /** Measured values in any unit, with as many decimals as they need, up to six. */
    MEASURE("#,##0.######"),
    TITLE,
    /** Heading of a part of a page. */
    SECTION,
    /** Column heading of a table. */
    HEADER,
    /** Name beside a value. */
    LABEL,
    /** A sentence that must not be overlooked. */
    WARNING,
    CONFORMS,
    DOES_NOT_CONFORM,
    NOT_ASSESSED,
    CONCEDED;

    private final String numberFormat;

    Look() {
        this("@");
    }

    Look(String numberFormat) {
        this.numberFormat = numberFormat;
    }

    /** Format code as ISO/IEC 29500-1, 18.8.31 defines them; {@code @} for text. */
    String numberFormat() {
        return numberFormat;
    }

    boolean isNumber() {
        return !numberFormat.equals("@");
    }
}
