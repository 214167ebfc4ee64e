package runtrue.report.drawing.svg;

/**
 * How a line is drawn.
 *
 * @param colour as {@code #rrggbb}
 * @param width millimetres
 * @param dashes lengths of dash and gap in millimetres with spaces between; empty for a full line
 */
public record Pen(String colour, double width, String dashes) {
    /** A full line. */
    public static Pen of(String colour, double width) {
        return new Pen(colour, width, "");
    }
}
