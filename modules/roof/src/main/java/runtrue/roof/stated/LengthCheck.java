package runtrue.roof.stated;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import runtrue.ifc.stated.StatedQuantity;

/** Stated thicknesses and lengths beside those that the geometry gives. */
final class LengthCheck {
    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;
    private static final double[] PREFIXES = {1e3, 1e-3, 1e2, 1e-2, 10, 0.1};

    /** A hundredth. */
    private static final double SURE = 0.01;

    private final StatedTolerances tolerances;

    LengthCheck(StatedTolerances tolerances) {
        this.tolerances = tolerances;
    }

    /**
     * Compares a thickness.
     *
     * @param derived square to the surface, metres, greatest first; of a body in layers, the nearest counts
     * @param pitch of the surface, radians
     */
    Comparison thickness(StatedQuantity stated, List<Double> derived, double pitch) {
        if (derived.isEmpty()) {
            return Comparison.none(
                    stated.value(), "its geometry has no underside parallel to its upper side to measure to");
        }
        double thickness = derived.stream()
                .filter(t -> Math.abs(t - stated.value()) <= tolerances.ofThickness(t))
                .findFirst()
                .orElse(derived.get(0));
        double plumb = thickness / Math.cos(pitch);
        return compare(stated, thickness, "square to its upper side", tolerances::ofThickness, plumb, Mistake.PLUMB);
    }

    /**
     * Compares a member's length.
     *
     * @param length along its axis, from end to end, metres
     * @param depth of its section, metres
     * @param slope of its axis to the horizontal, radians
     */
    Comparison length(StatedQuantity stated, double length, double depth, double slope) {
        return compare(
                stated,
                length,
                "along its axis, from end to end",
                d -> tolerances.ofLength(d, depth),
                length * Math.cos(slope),
                Mistake.IN_PLAN);
    }

    private static Comparison compare(
            StatedQuantity stated,
            double derived,
            String from,
            DoubleUnaryOperator tolerance,
            double otherWay,
            Mistake measuredSo) {
        double value = stated.value();
        double allowed = tolerance.applyAsDouble(derived);
        Mistake mistake = Mistake.NONE;
        if (Math.abs(value - derived) <= allowed) {
            mistake = Mistake.NONE;
        } else if (value == 0) {
            mistake = Mistake.ZERO;
        } else if (alike(value, otherWay)) {
            mistake = measuredSo;
        } else {
            mistake = ofUnit(value, derived);
        }
        return Comparison.of(value, derived, from, allowed, mistake);
    }

    private static Mistake ofUnit(double value, double derived) {
        for (double prefix : PREFIXES) {
            if (alike(value * prefix, derived)) {
                return Mistake.LENGTH_PREFIX;
            }
        }
        if (alike(value * FOOT, derived) || alike(value / FOOT, derived)) {
            return Mistake.FEET;
        }
        boolean inches =
                alike(value * INCH, derived) || alike(value * 1000 * INCH, derived) || alike(value / INCH, derived);
        return inches ? Mistake.INCHES : Mistake.NONE;
    }

    /** Nearer than any tolerance for rounding: a kind of mistake is named only where it gives the very number. */
    private static boolean alike(double a, double b) {
        return Math.abs(a - b) <= SURE * b;
    }
}
