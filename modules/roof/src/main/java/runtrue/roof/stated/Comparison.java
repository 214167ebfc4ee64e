package runtrue.roof.stated;

import java.util.OptionalDouble;

/**
 * What a comparison gave.
 *
 * @param value the stated value as compared
 * @param reason why there is nothing to compare with; then the rest is empty
 */
record Comparison(
        double value, OptionalDouble derived, String derivedFrom, double tolerance, Mistake mistake, String reason) {
    static Comparison of(double value, double derived, String from, double tolerance, Mistake mistake) {
        return new Comparison(value, OptionalDouble.of(derived), from, tolerance, mistake, "");
    }

    static Comparison none(double value, String reason) {
        return new Comparison(value, OptionalDouble.empty(), "", 0, Mistake.NONE, reason);
    }
}
