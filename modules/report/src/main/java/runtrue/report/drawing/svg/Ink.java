package runtrue.report.drawing.svg;

/**
 * The colours of a drawing. Blue is where water gathers or leaves, green the edges along the fall, black where planes part.
 * One accent is kept for what needs a person. The four differ in lightness and for the common kinds of colour blindness
 * (they are close to the palette of Okabe and Ito, "Color Universal Design", 2008; from memory), and none of them is ever
 * the only sign.
 */
public final class Ink {
    public static final String BLACK = "#1b2126";
    public static final String GREY = "#68737d";
    public static final String PALE = "#aab3bb";
    public static final String FAINT = "#dfe4e8";
    public static final String WHITE = "#ffffff";
    public static final String WATER = "#0070b0";
    public static final String SIDE = "#00795c";
    public static final String ACCENT = "#c84a00";

    private Ink() {}
}
