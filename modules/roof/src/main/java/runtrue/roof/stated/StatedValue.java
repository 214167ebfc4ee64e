package runtrue.roof.stated;

import java.util.List;
import java.util.OptionalDouble;
import runtrue.ifc.Element;
import runtrue.ifc.stated.StatedQuantity;

/**
 * A stated value beside the derived one, SI.
 *
 * @param element that states it
 * @param roof whether the element is part of the roof; else it is a member
 * @param value the stated value as it is compared: where no unit is stated, as the unit that was found to fit gives it
 * @param derived from the geometry; empty when there is nothing to compare with, {@code reason} says why
 * @param derivedFrom what was measured
 * @param tolerance that holds for this value; 0 when it is not compared
 * @param mistake what is wrong with it, as far as can be told
 * @param reason why it was not compared; empty when it was
 * @param planes ids of the planes that the element is part of, sorted
 */
public record StatedValue(
        Element element,
        boolean roof,
        StatedQuantity stated,
        double value,
        OptionalDouble derived,
        String derivedFrom,
        double tolerance,
        Mistake mistake,
        String reason,
        List<String> planes) {
    public StatedValue {
        planes = List.copyOf(planes);
    }

    /** Distance between the two; empty when not compared. */
    public OptionalDouble difference() {
        return derived.isPresent() ? OptionalDouble.of(Math.abs(value - derived.getAsDouble())) : derived;
    }

    /** Whether it was compared and is farther off than the tolerance. */
    public boolean contradicts() {
        return difference().orElse(0) > tolerance;
    }
}
