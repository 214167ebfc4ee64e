package runtrue.samples.ifc;

import java.util.List;

/** Writes a project's unit assignment. */
final class UnitWriter {
    private final StepWriter step;

    UnitWriter(StepWriter step) {
        this.step = step;
    }

    StepRef assignment(LengthUnit length, AngleUnit angle) {
        StepRef squareMetre = si("AREAUNIT", Step.UNSET, "SQUARE_METRE");
        StepRef cubicMetre = si("VOLUMEUNIT", Step.UNSET, "CUBIC_METRE");
        StepRef radian = si("PLANEANGLEUNIT", Step.UNSET, "RADIAN");
        StepRef angleUnit = angle == AngleUnit.RADIAN
                ? radian
                : converted("PLANEANGLEUNIT", 0, "DEGREE", "IFCPLANEANGLEMEASURE", Math.PI / 180, radian);
        return switch (length) {
            case METRE -> units(metre(), squareMetre, cubicMetre, angleUnit);
            case MILLIMETRE ->
                units(si("LENGTHUNIT", Step.enumeration("MILLI"), "METRE"), squareMetre, cubicMetre, angleUnit);
            case FOOT -> {
                double foot = length.metres();
                yield units(
                        converted("LENGTHUNIT", 1, "FOOT", "IFCLENGTHMEASURE", foot, metre()),
                        converted("AREAUNIT", 2, "SQUARE FOOT", "IFCAREAMEASURE", foot * foot, squareMetre),
                        converted("VOLUMEUNIT", 3, "CUBIC FOOT", "IFCVOLUMEMEASURE", foot * foot * foot, cubicMetre),
                        angleUnit);
            }
        };
    }

    private StepRef metre() {
        return si("LENGTHUNIT", Step.UNSET, "METRE");
    }

    private StepRef units(StepRef... units) {
        return step.entity("IFCUNITASSIGNMENT", List.of(units));
    }

    private StepRef si(String type, Object prefix, String name) {
        return step.entity("IFCSIUNIT", Step.DERIVED, Step.enumeration(type), prefix, Step.enumeration(name));
    }

    private StepRef converted(
            String type, int lengthExponent, String name, String measure, double factor, StepRef base) {
        StepRef exponents = step.shared("IFCDIMENSIONALEXPONENTS", lengthExponent, 0, 0, 0, 0, 0, 0);
        StepRef value = step.entity("IFCMEASUREWITHUNIT", new Step.Typed(measure, factor), base);
        return step.entity("IFCCONVERSIONBASEDUNIT", exponents, Step.enumeration(type), name, value);
    }
}
