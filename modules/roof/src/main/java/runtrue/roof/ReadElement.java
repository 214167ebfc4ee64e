package runtrue.roof;

import runtrue.ifc.Element;
import runtrue.ifc.select.Grounds;
import runtrue.shape.Shape;

/**
 * An element whose shape was read, as roof or as member.
 *
 * @param grounds on which it was chosen
 * @param evidence the same in words, for example {@code predefined type PURLIN}
 */
public record ReadElement(Element element, Grounds grounds, String evidence, Shape.Body body) {
    /** One that only its class speaks for. */
    public ReadElement(Element element, String evidence, Shape.Body body) {
        this(element, Grounds.CLASS, evidence, body);
    }
}
