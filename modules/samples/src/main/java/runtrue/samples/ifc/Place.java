package runtrue.samples.ifc;

/**
 * Something that other things are placed in or on: a building, a storey, a slab.
 *
 * @param entity its instance
 * @param placement its IfcLocalPlacement
 * @param origin where that placement's origin lies in the coordinates in which frames are given, metres
 */
public record Place(StepRef entity, StepRef placement, Vec origin) {}
