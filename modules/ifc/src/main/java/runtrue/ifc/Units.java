package runtrue.ifc;

/**
 * Factors from the file's units to SI.
 *
 * @param length metres in one length unit
 * @param area square metres in one area unit
 * @param volume cubic metres in one volume unit
 * @param planeAngle radians in one plane angle unit
 */
public record Units(double length, double area, double volume, double planeAngle) {}
