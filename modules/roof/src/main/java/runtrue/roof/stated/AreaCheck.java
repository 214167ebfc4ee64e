package runtrue.roof.stated;

import java.util.Optional;
import runtrue.ifc.stated.AreaMeaning;
import runtrue.ifc.stated.StatedQuantity;

/** A stated area beside those that the geometry gives. */
final class AreaCheck {
    private static final double SQUARE_FOOT = 0.3048 * 0.3048;
    private static final double[] PREFIXES = {1e6, 1e-6, 1e4, 1e-4, 1e2, 1e-2};

    private final StatedTolerances tolerances;
    private final RoofAreas own;
    private final Optional<RoofAreas> whole;

    /**
     * Prepares.
     *
     * @param whole areas of the roof that the element is a part of, where it is one of several parts
     */
    AreaCheck(StatedTolerances tolerances, RoofAreas own, Optional<RoofAreas> whole) {
        this.tolerances = tolerances;
        this.own = own;
        this.whole = whole;
    }

    /** An area that the name may mean. */
    private record Candidate(double area, String what) {}

    Comparison compare(StatedQuantity stated) {
        if (own.net() <= 0) {
            return Comparison.none(stated.value(), "its geometry has no upward face to measure");
        }
        Candidate nearest = nearest(stated);
        double tolerance = tolerances.ofArea(nearest.area());
        boolean agrees = Math.abs(stated.value() - nearest.area()) <= tolerance;
        Mistake mistake = agrees ? Mistake.NONE : mistake(stated.value(), stated.meaning());
        return Comparison.of(stated.value(), nearest.area(), nearest.what(), tolerance, mistake);
    }

    /** Where the standard leaves open what is meant, the nearest counts: it is no mistake to choose. */
    private Candidate nearest(StatedQuantity stated) {
        Candidate best = null;
        for (Candidate candidate : candidates(stated.meaning())) {
            if (best == null || Math.abs(candidate.area() - stated.value()) < Math.abs(best.area() - stated.value())) {
                best = candidate;
            }
        }
        if (best == null) {
            throw new IllegalStateException(stated.source() + " is no area");
        }
        return best;
    }

    private Candidate[] candidates(AreaMeaning meaning) {
        Candidate net = new Candidate(own.net(), "true area of the upper side, openings off");
        Candidate gross = new Candidate(own.gross(), "true area of the upper side, openings kept");
        Candidate netPlan = new Candidate(own.netPlan(), "area in plan, openings off");
        Candidate grossPlan = new Candidate(own.grossPlan(), "area in plan, openings kept");
        return switch (meaning) {
            case GROSS -> new Candidate[] {gross};
            case NET -> new Candidate[] {net};
            case TOTAL -> new Candidate[] {net, gross};
            case PLAN -> new Candidate[] {netPlan, grossPlan};
            case UNSAID -> new Candidate[] {net, gross, netPlan, grossPlan};
            case NONE -> new Candidate[] {};
        };
    }

    private Mistake mistake(double stated, AreaMeaning meaning) {
        if (stated == 0) {
            return Mistake.ZERO;
        } else if (meaning == AreaMeaning.PLAN && isTrue(stated)) {
            return Mistake.TRUE_FOR_PLAN;
        } else if (meaning != AreaMeaning.PLAN && isPlan(stated)) {
            return Mistake.PLAN_FOR_TRUE;
        } else if (meaning == AreaMeaning.GROSS && near(stated, own.net())) {
            return Mistake.OPENINGS_OFF;
        } else if (meaning == AreaMeaning.NET && near(stated, own.gross())) {
            return Mistake.OPENINGS_KEPT;
        } else if (whole.filter(w -> isOneOf(stated, w)).isPresent()) {
            return Mistake.WHOLE_ROOF;
        }
        return ofUnitOrSide(stated);
    }

    private Mistake ofUnitOrSide(double stated) {
        if (isOneOf(stated / SQUARE_FOOT, own)) {
            return Mistake.TWICE_TO_SQUARE_METRES;
        } else if (isOneOf(stated * SQUARE_FOOT, own)) {
            return Mistake.SQUARE_FEET;
        } else if (near(stated, own.allFaces())) {
            return Mistake.ALL_FACES;
        } else if (near(stated, own.shadow())) {
            return Mistake.SHADOW;
        } else if (near(stated, own.net() + own.underside())) {
            return Mistake.BOTH_SIDES;
        } else if (near(stated, own.underside())) {
            return Mistake.UNDERSIDE;
        }
        for (double prefix : PREFIXES) {
            if (isOneOf(stated * prefix, own)) {
                return Mistake.AREA_PREFIX;
            }
        }
        return Mistake.NONE;
    }

    private boolean isOneOf(double area, RoofAreas of) {
        return near(area, of.net()) || near(area, of.gross()) || near(area, of.netPlan()) || near(area, of.grossPlan());
    }

    private boolean isTrue(double area) {
        return near(area, own.net()) || near(area, own.gross());
    }

    private boolean isPlan(double area) {
        return near(area, own.netPlan()) || near(area, own.grossPlan());
    }

    /** A kind of mistake is named only where it gives the number itself, small areas or not. */
    private boolean near(double a, double b) {
        return Math.abs(a - b) <= tolerances.areaShare() * b;
    }
}
