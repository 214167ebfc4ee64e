package runtrue.report.drawing.svg;

/**
 * How text is set.
 *
 * @param size of the letters' body, millimetres
 * @param colour as {@code #rrggbb}
 */
public record Type(double size, boolean bold, String colour) {
    public static final Type SMALL = new Type(2.3, false, Ink.BLACK);
    public static final Type SMALL_BOLD = new Type(2.3, true, Ink.BLACK);
    public static final Type QUIET = new Type(2.3, false, Ink.GREY);
    public static final Type NORMAL = new Type(2.8, false, Ink.BLACK);
    public static final Type NAME = new Type(3.1, true, Ink.BLACK);
    public static final Type HEADING = new Type(2.7, true, Ink.BLACK);
    public static final Type SUBTITLE = new Type(3.9, true, Ink.BLACK);
    public static final Type TITLE = new Type(5.2, true, Ink.BLACK);

    /** The same in another colour. */
    public Type in(String other) {
        return new Type(size, bold, other);
    }

    /** From the middle of a line down to where its letters stand. */
    public double drop() {
        return 0.36 * size;
    }

    /** Room that one line of it takes. */
    public double lineHeight() {
        return 1.3 * size;
    }

    /** Width of a text, never less than what a common sans-serif takes. */
    public double width(String text) {
        return TextWidth.of(text) * size * (bold ? 1.08 : 1);
    }
}
