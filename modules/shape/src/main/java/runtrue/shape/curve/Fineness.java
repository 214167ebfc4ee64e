package runtrue.shape.curve;

import runtrue.shape.ShapeException;

/**
 * How finely curves are cut into chords. A chord over the angle a leaves an arc of radius r by r (1 - cos(a/2)), which
 * is 2 r sin^2(a/4); that gives the greatest angle.
 *
 * @param chord greatest distance between a curve and its chords
 * @param point places this near to each other are one
 * @param reach the chord tolerance also holds for what is carried along at this distance from the curve
 */
public record Fineness(double chord, double point, double reach) {
    /** However small a circle is, it keeps twelve sides, and 95 % of its area. */
    static final double GREATEST_STEP = Math.PI / 6;

    /** More chords than this in one curve are no building's: a circle of 100 m within the standard 2 mm has 500. */
    static final int MOST_CHORDS = 100_000;

    /** For curves that carry nothing along. */
    public static Fineness of(double chord, double point) {
        return new Fineness(chord, point, 0);
    }

    public Fineness carrying(double distance) {
        return new Fineness(chord, point, distance);
    }

    /** Number of equal chords for an arc. */
    public int chords(double radius, double angle) {
        double outer = radius + reach;
        double step = chord >= outer ? GREATEST_STEP : 4 * Math.asin(Math.sqrt(chord / (2 * outer)));
        return counted(Math.ceil(Math.abs(angle) / Math.min(step, GREATEST_STEP) - 1e-9));
    }

    static int counted(double chords) {
        if (!(chords <= MOST_CHORDS)) {
            throw new ShapeException("A curve needs more than " + MOST_CHORDS
                    + " chords; check its size and the length unit, or export it with lines.");
        }
        return Math.max(1, (int) chords);
    }
}
