package runtrue.samples.expected;

import java.util.OptionalDouble;

/**
 * A fault put into a model on purpose.
 *
 * @param subject name of the element it is about; of a plane made of several, the first
 * @param kind what is wrong, for example {@code internal span}, {@code no representation}
 * @param value measured, in {@code unit}; empty where nothing is measured
 * @param where in words: bay, grid lines, side
 */
public record ExpectedFinding(String subject, String kind, OptionalDouble value, String unit, String where) {
    static ExpectedFinding measured(String subject, String kind, double value, String unit, String where) {
        return new ExpectedFinding(subject, kind, OptionalDouble.of(value), unit, where);
    }

    static ExpectedFinding of(String subject, String kind, String where) {
        return new ExpectedFinding(subject, kind, OptionalDouble.empty(), "", where);
    }
}
