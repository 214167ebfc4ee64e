package runtrue.ifc.select;

import runtrue.ifc.IfcEntity;

/**
 * An element that was chosen.
 *
 * @param grounds the surest of the grounds
 * @param evidence why, surest reason first: {@code predefined type PURLIN}, {@code part of IfcRoof "Main"},
 *     {@code name matches "Pfette"}, {@code property Pset.X is "y"}, {@code classification "Ef_30"}, or
 *     {@code class only}
 */
public record FoundElement(IfcEntity entity, Grounds grounds, String evidence) {
    FoundElement(IfcEntity entity, Evidence evidence) {
        this(entity, evidence.grounds(), evidence.text());
    }
}
