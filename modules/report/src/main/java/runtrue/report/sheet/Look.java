package runtrue.report.sheet;

/** How a cell looks. Each becomes one style of the workbook, shared by all its cells. */
public enum Look {
    TEXT,
    /** Sentences: wrapped. */
    WRAPPED,
    /** Wrapped, and leads elsewhere in the workbook. */
    LINK,
    COUNT("#,##0_)"),
    LINK_COUNT("#,##0_)"),
    /** Lengths in metres, and what else has three decimals. */
    METRES("#,##0.000_)"),
    MILLIMETRES("#,##0.0_)"),
    SQUARE_METRES("#,##0.00_)"),
    DEGREES("0.00_)"),
    /** Quantities in any unit. */
    DECIMAL("#,##0.00_)"),
    /** Measured values with as many decimals as they have. */
    MEASURE("General_)"),
    /** Texts and numbers of a cover, without the lines of a table. */
    NOTE,
    LABEL_LINK,
    NOTE_COUNT("#,##0_)"),
    NOTE_MEASURE("General_)"),
    TITLE,
    /** Heading of a part of a page. */
    SECTION,
    /** Column heading over texts. */
    HEADER,
    /** Column heading over numbers, at the right as they are. */
    NUMBER_HEADER,
    /** Name beside a value. */
    LABEL,
    /** A sentence that must not be overlooked. */
    WARNING,
    CONFORMS,
    DOES_NOT_CONFORM,
    NOT_ASSESSED,
    CONCEDED,
    /** The outcome of the whole check, over the cover's width. */
    ALL_CONFORM,
    SOME_DO_NOT_CONFORM,
    SOME_NOT_ASSESSED;

    private final String numberFormat;

    Look() {
        this("@");
    }

    Look(String numberFormat) {
        this.numberFormat = numberFormat;
    }

    /**
     * Format code as ISO/IEC 29500-1, 18.8.31 defines them; {@code @} for text. The {@code _)} at the end leaves the width of a
     * bracket between a number and the text in the next column.
     */
    String numberFormat() {
        return numberFormat;
    }

    /** How the same cell looks when it leads elsewhere. */
    Look linked() {
        return switch (this) {
            case TEXT, WRAPPED -> LINK;
            case COUNT -> LINK_COUNT;
            case LABEL -> LABEL_LINK;
            default -> this;
        };
    }

    boolean isNumber() {
        return !numberFormat.equals("@");
    }
}
