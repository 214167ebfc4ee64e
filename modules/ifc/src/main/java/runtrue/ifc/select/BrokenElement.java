package runtrue.ifc.select;

import runtrue.ifc.IfcEntity;

/**
 * An element that might have been chosen, but whose record cannot be read far enough to tell.
 *
 * @param roof whether it was looked at as roof; else as a possible support
 * @param reason one sentence
 */
public record BrokenElement(IfcEntity entity, boolean roof, String reason) {}
