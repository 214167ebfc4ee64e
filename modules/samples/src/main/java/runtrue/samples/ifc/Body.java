package runtrue.samples.ifc;

/**
 * A shape's item and the type of representation that may hold it.
 *
 * @param type RepresentationType, for example {@code SweptSolid}
 */
public record Body(String type, StepRef item) {}
