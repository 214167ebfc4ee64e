package runtrue.wind.eurocode;

import runtrue.wind.Certainty;

/**
 * External coefficients of one zone at one pitch: the lower and the higher of both sets of values.
 *
 * @param low10 lower value for 10 square metres and more
 * @param low1 lower value for 1 square metre and less
 * @param high10 higher value for 10 square metres and more
 * @param high1 higher value for 1 square metre and less
 * @param certainty the less sure of the values used
 * @param note what has to be known of them; may be empty
 */
record Cpe(double low10, double low1, double high10, double high1, Certainty certainty, String note) {
    private static final String MIXED = "between pitches whose values differ in sign the worse one is taken";

    /** By the logarithm of the loaded area between 1 and 10 square metres, figure 7.2. */
    double low(double area) {
        return byArea(low10, low1, area);
    }

    double high(double area) {
        return byArea(high10, high1, area);
    }

    static double byArea(double cpe10, double cpe1, double area) {
        double share = Math.log10(Math.min(10, Math.max(1, area)));
        return cpe1 - (cpe1 - cpe10) * share;
    }

    /** Together with another zone value at the same place: what holds for both sets of values. */
    Cpe with(Cpe other) {
        return new Cpe(
                Math.min(low10, other.low10),
                Math.min(low1, other.low1),
                Math.max(high10, other.high10),
                Math.max(high1, other.high1),
                certainty.lessSure(other.certainty),
                joined(note, other.note));
    }

    /**
     * Linear between two pitches, each of the two series for itself and only between values of one sign; of values
     * with different signs the further one from the other series is taken.
     */
    Cpe towards(Cpe next, double share) {
        return new Cpe(
                between(low10, next.low10, share, true),
                between(low1, next.low1, share, true),
                between(high10, next.high10, share, false),
                between(high1, next.high1, share, false),
                certainty.lessSure(next.certainty),
                joined(joined(note, next.note), mixed(next) ? MIXED : ""));
    }

    private boolean mixed(Cpe next) {
        return low10 * next.low10 < 0 || low1 * next.low1 < 0 || high10 * next.high10 < 0 || high1 * next.high1 < 0;
    }

    private static double between(double a, double b, double share, boolean low) {
        if (a * b >= 0) {
            return a + (b - a) * share;
        }
        return low ? Math.min(a, b) : Math.max(a, b);
    }

    private static String joined(String a, String b) {
        return a.isEmpty() || a.equals(b) ? b : b.isEmpty() ? a : a + "; " + b;
    }
}
