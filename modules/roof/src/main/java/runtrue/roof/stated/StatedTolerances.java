package runtrue.roof.stated;

/**
 * How far a stated value may be from the derived one before the model contradicts itself. Printed with each result.
 *
 * @param pitch radians: people and programs state whole degrees, which are off by half a degree at most
 * @param areaShare of the derived area: faceting of curves and cut edges counted or not
 * @param area square metres, for small areas: values are stated with one or two decimals
 * @param lengthShare of the derived length or thickness: values are rounded to the millimetre or the sixteenth of an inch
 * @param thickness metres: below the thickness of a sheet or membrane that some count and some do not
 * @param length metres, for members, besides the depth of the section: ends cut on a bevel are measured on either side
 */
public record StatedTolerances(
        double pitch, double areaShare, double area, double lengthShare, double thickness, double length) {
    public static StatedTolerances standard() {
        return new StatedTolerances(Math.toRadians(0.5), 0.01, 0.05, 0.01, 0.002, 0.01);
    }

    double ofArea(double derived) {
        return Math.max(area, areaShare * derived);
    }

    double ofThickness(double derived) {
        return Math.max(thickness, lengthShare * derived);
    }

    double ofLength(double derived, double depth) {
        return Math.max(length, lengthShare * derived) + depth;
    }
}
