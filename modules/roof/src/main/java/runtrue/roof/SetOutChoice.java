package runtrue.roof;

/**
 * What comes of setting the sheets of a plane out in one way.
 *
 * @param coverWidth of one sheet, metres
 * @param strips side by side
 * @param firstStrip width of the strip at the left edge looking up the fall, metres
 * @param lastStrip width of the strip at the right edge, metres
 * @param sheets pieces of metal
 * @param length of all their blanks together, metres
 * @param waste area of the blanks in full cover width that covers no roof, square metres
 * @param chosen whether this is how the sheets are laid out
 */
public record SetOutChoice(
        SetOut setOut,
        double coverWidth,
        int strips,
        double firstStrip,
        double lastStrip,
        int sheets,
        double length,
        double waste,
        boolean chosen) {
    /** Width of the narrower outer strip, metres: what is hard to fix and to fold when it is little. */
    public double narrowest() {
        return Math.min(firstStrip, lastStrip);
    }
}
