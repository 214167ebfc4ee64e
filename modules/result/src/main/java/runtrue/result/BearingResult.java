package runtrue.result;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What a plane's sheets rest on and how true it lies. Figures are absent where no support across the fall was found.
 *
 * @param carriedBy {@code purlins}, {@code battens}, {@code rafters}, {@code deck} or {@code unknown}
 * @param depthMetres from the skin down to the contact plane: parallel to the roof plane, at the median level of the supports
 * @param gapMetres from the underside of the stated build-up down to the contact plane, negative for a clash; absent also
 *     when no depth is stated
 * @param deviationMetres greatest distance of a contact face from the contact plane
 * @param stepMetres greatest step between neighbouring supports along the fall
 * @param twistMetres greatest lean of a support against the next, over the width that they share
 * @param tiltDegrees between the plane that fits the contact faces best (least squares) and the roof plane
 * @param near every member near the plane that is no support, and whatever stands above the contact plane; highest first
 * @param faults where support lines stop short, miss a piece or run askew
 */
public record BearingResult(
        String carriedBy,
        OptionalDouble depthMetres,
        OptionalDouble gapMetres,
        OptionalDouble deviationMetres,
        OptionalDouble stepMetres,
        OptionalDouble twistMetres,
        OptionalDouble tiltDegrees,
        List<NearThing> near,
        List<LineFault> faults) {
    public BearingResult {
        near = List.copyOf(near);
        faults = List.copyOf(faults);
    }

    /** Of a plane about which nothing is known. */
    public static BearingResult unknown() {
        OptionalDouble none = OptionalDouble.empty();
        return new BearingResult("unknown", none, none, none, none, none, none, List.of(), List.of());
    }

    /**
     * Something near the contact plane that is no support.
     *
     * @param standing for example {@code proud of the contact plane}
     * @param aboveMetres its highest point above the contact plane, negative below
     * @param place its middle on the plane's skin, in world coordinates
     * @param gridPlace nearest grid lines; empty when there is no grid
     */
    public record NearThing(ElementRef element, String standing, double aboveMetres, Point place, String gridPlace) {}

    /**
     * Where a support line is not what it is elsewhere.
     *
     * @param kind {@code stops short}, {@code missing} or {@code askew}
     * @param line its number from the eave
     * @param u extent across the fall over which it holds
     * @param angleDegrees out of the direction across the fall; 0 unless askew
     * @param place its middle, in world coordinates
     * @param gridPlace nearest grid lines; empty when there is no grid
     */
    public record LineFault(
            String kind, int line, PlaneResult.Range u, double angleDegrees, Point place, String gridPlace) {}
}
