package runtrue.roof;

/**
 * One sheet of a plane: a strip of at most one cover width, cut to length.
 *
 * @param number from the set-out verge, starting with 1; sheets of one strip share it
 * @param u extent across the fall, metres; narrower than the cover width where trimmed
 * @param v extent along the fall, from its lowest corner to its highest
 * @param length of the longest line along the fall within the strip, metres
 * @param area net area covered, square metres
 * @param trimmed whether it is narrower than the cover width
 * @param tapered whether an end is not square
 * @param cut whether a penetration cuts through its full width or part of it
 */
public record Sheet(
        int number, Interval u, Interval v, double length, double area, boolean trimmed, boolean tapered, boolean cut) {
    /**
     * Length of the square-cut strip that it is cut from, metres: what is ordered before allowances. Longer than the longest
     * line where both ends are cut askew the same way, between a hip and a valley.
     */
    public double blank() {
        return v.length();
    }
}
