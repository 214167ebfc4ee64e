package runtrue.ifc.select;

import runtrue.ifc.IfcEntity;

/**
 * An element that was chosen.
 *
 * @param evidence why, surest reason first: {@code predefined type PURLIN}, {@code part of IfcRoof "Main"},
 *     {@code name matches "Pfette"}, {@code property Pset.X is "y"}, {@code classification "Ef_30"}, or
 *     {@code class only}
 */
public record FoundElement(IfcEntity entity, String evidence) {}
