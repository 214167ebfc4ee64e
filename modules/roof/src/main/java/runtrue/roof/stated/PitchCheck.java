package runtrue.roof.stated;

import java.util.List;
import runtrue.ifc.stated.StatedQuantity;
import runtrue.roof.stated.ElementMeasures.Slope;

/** A stated pitch beside the pitches that the geometry gives. */
final class PitchCheck {
    /** A part of the skin that is smaller than this share of it is a cheek or an edge, and states no pitch. */
    private static final double LEAST_SHARE = 0.1;

    /** With more pitches than this, and none over half the area, a roof is curved and has no single pitch. */
    private static final int MOST_PITCHES = 4;

    private final StatedTolerances tolerances;

    PitchCheck(StatedTolerances tolerances) {
        this.tolerances = tolerances;
    }

    /**
     * Compares with the nearest pitch that a fair share of the skin has.
     *
     * @param slopes largest area first
     */
    Comparison compare(StatedQuantity stated, List<Slope> slopes) {
        double whole = slopes.stream().mapToDouble(Slope::area).sum();
        if (slopes.isEmpty() || whole <= 0) {
            return Comparison.none(stated.value(), "its geometry has no upward face to measure");
        }
        boolean curved = slopes.size() > MOST_PITCHES && slopes.get(0).area() < whole / 2;
        if (curved) {
            return Comparison.none(stated.value(), "its upper side is curved and has no single pitch");
        }
        Comparison best = null;
        for (Slope slope : slopes) {
            if (best == null || slope.area() >= LEAST_SHARE * whole) {
                Comparison next = compare(stated, slope.pitch(), "pitch of its upper side");
                best = best == null || off(next) < off(best) ? next : best;
            }
        }
        if (best == null) {
            throw new IllegalStateException("a skin with area has a slope");
        }
        return best;
    }

    private static double off(Comparison comparison) {
        return Math.abs(comparison.value() - comparison.derived().orElse(0));
    }

    /** Compares with one pitch, radians. */
    Comparison compare(StatedQuantity stated, double pitch, String from) {
        if (!stated.unitStated()) {
            double asDegrees = Math.toRadians(stated.raw());
            // 0 is 0 in any unit, and a small number of radians is no guess.
            if (stated.raw() != 0 && near(asDegrees, pitch) && !near(stated.value(), pitch)) {
                return Comparison.of(asDegrees, pitch, from, tolerances.pitch(), Mistake.READ_AS_DEGREES);
            }
        }
        Mistake mistake = near(stated.value(), pitch) ? Mistake.NONE : mistake(stated, pitch);
        return Comparison.of(stated.value(), pitch, from, tolerances.pitch(), mistake);
    }

    private Mistake mistake(StatedQuantity stated, double pitch) {
        double value = stated.value();
        if (value == 0) {
            return Mistake.ZERO;
        } else if (near(Math.toRadians(value), pitch)) {
            return Mistake.DEGREES_AS_RADIANS;
        } else if (near(Math.toDegrees(value), pitch)) {
            return Mistake.RADIANS_AS_DEGREES;
        } else if (near(-value, pitch)) {
            return Mistake.SIGN;
        } else if (near(Math.PI / 2 - value, pitch)) {
            return Mistake.FROM_THE_VERTICAL;
        } else if (near(Math.atan(stated.raw()), pitch) || near(Math.atan(stated.raw() / 100), pitch)) {
            return Mistake.SLOPE;
        }
        return Mistake.NONE;
    }

    private boolean near(double a, double b) {
        return Math.abs(a - b) <= tolerances.pitch();
    }
}
