package runtrue.roof.read;

import runtrue.ifc.Element;
import runtrue.shape.Shape;

/**
 * An element that was chosen but has no shape that could be read.
 *
 * @param evidence why it was chosen
 * @param roof whether it was chosen as roof; else as a possible support
 */
public record UnreadElement(Element element, String evidence, boolean roof, Shape.Unread why) {}
