package runtrue.roof.bearing;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import runtrue.roof.Interval;
import runtrue.roof.SupportPiece;

/**
 * The supports' contact faces against the contact plane: parallel to the roof plane, at the level of most of them. Parallel,
 * because sheets are laid to the roof plane and a plane fitted freely would hide a tilt that all supports share; at the
 * level of most (the median by length), because one support out of line must show in full and not shift the others.
 *
 * @param level w of the contact plane, metres, negative below the skin
 * @param tilt between the plane that fits the contact faces best (least squares by length) and the roof plane, radians;
 *     empty with fewer than two lines
 * @param deviations of each piece, in the order of the lines
 * @param steps between neighbouring supports along the fall
 * @param gap between the underside of the stated build-up and the contact plane, metres, negative for a clash; empty
 *     when no depth is stated
 */
public record TruePlane(
        double level, OptionalDouble tilt, List<Deviation> deviations, List<Step> steps, OptionalDouble gap) {
    public TruePlane {
        deviations = List.copyOf(deviations);
        steps = List.copyOf(steps);
    }

    /**
     * One piece, as a rule one bay of a line.
     *
     * @param line its line's number from the eave
     * @param atFrom height of its contact face above the contact plane at its lesser u, metres, negative for low
     * @param atTo the same at its greater u
     */
    public record Deviation(int line, SupportPiece piece, double atFrom, double atTo) {
        /** The one farther off, with its sign; for equal ones the first. */
        public double greatest() {
            return Math.abs(atTo) > Math.abs(atFrom) ? atTo : atFrom;
        }
    }

    /**
     * Between two neighbouring supports up the fall, over the width that they share.
     *
     * @param lower line's number
     * @param upper line's number
     * @param atFrom how much the upper one stands higher above the contact plane at the lesser u, metres
     * @param atTo the same at the greater u
     */
    public record Step(int lower, int upper, Interval u, double atFrom, double atTo) {
        /** How far the sheet must bend up or down, metres. */
        public double height() {
            return Math.max(Math.abs(atFrom), Math.abs(atTo));
        }

        /** How much the one leans against the other over the shared width, metres. */
        public double twist() {
            return Math.abs(atTo - atFrom);
        }
    }

    /** Greatest deviation either way, metres. */
    public double deviation() {
        return deviations.stream()
                .mapToDouble(d -> Math.abs(d.greatest()))
                .max()
                .orElse(0);
    }

    /** Greatest step, metres; empty when no two supports follow each other. */
    public OptionalDouble step() {
        return steps.stream().mapToDouble(Step::height).max();
    }

    /** Greatest twist, metres; empty when no two supports follow each other. */
    public OptionalDouble twist() {
        return steps.stream().mapToDouble(Step::twist).max();
    }

    /** The piece farthest off. */
    public Deviation worst() {
        return deviations.stream()
                .max(Comparator.comparingDouble(d -> Math.abs(d.greatest())))
                .orElseThrow(() -> new IllegalStateException("a contact plane has at least one support"));
    }
}
