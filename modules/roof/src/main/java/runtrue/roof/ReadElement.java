package runtrue.roof;

import runtrue.ifc.Element;
import runtrue.shape.Shape;

/**
 * An element whose shape was read, as roof or as member.
 *
 * @param evidence why it was chosen, for example {@code predefined type PURLIN}
 */
public record ReadElement(Element element, String evidence, Shape.Body body) {}
