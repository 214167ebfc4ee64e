package runtrue.shape.curve;

import runtrue.shape.ShapeException;

/**
 * How finely curves are cut into chords. A chord over the angle a leaves an arc of radius r by r (1 - cos(a/2)), which
 * is 2 r sin^2(a/4); that gives the greatest angle for large circles. For small ones it is the area: the chord leaves out
 * 1 - sin(a)/a of its sector, which is less than a^2/6.
 *
 * @param chord greatest distance between a curve and its chords
 * @param point places this near to each other are one
 * @param reach the chord tolerance also holds for what is carried along at this distance from the curve
 * @param step greatest angle that one chord turns by, radians, however small the circle is
 */
public record Fineness(double chord, double point, double reach, double step) {
    /** More chords than this in one curve are no building's: a circle of 100 m within the standard 2 mm has 500. */
    static final int MOST_CHORDS = 100_000;

    /**
     * For curves that carry nothing along.
     *
     * @param lost greatest share of a circle's area that chords may leave out
     */
    public static Fineness of(double chord, double point, double lost) {
        return new Fineness(chord, point, 0, Math.sqrt(6 * lost));
    }

    public Fineness carrying(double distance) {
        return new Fineness(chord, point, distance, step);
    }

    /** Half the distance from curves that carry nothing along, for two ways of cutting of which both leave something out. */
    public Fineness halved() {
        return new Fineness(0.5 * chord, point, 0, step);
    }

    /** Number of equal chords for an arc. */
    public int chords(double radius, double angle) {
        double outer = radius + reach;
        double near = chord >= outer ? step : 4 * Math.asin(Math.sqrt(chord / (2 * outer)));
        return counted(Math.ceil(Math.abs(angle) / Math.min(near, step) - 1e-9));
    }

    static int counted(double chords) {
        if (!(chords <= MOST_CHORDS)) {
            throw new ShapeException("A curve needs more than " + MOST_CHORDS
                    + " chords; check its size and the length unit, or export it with lines.");
        }
        return Math.max(1, (int) chords);
    }
}
