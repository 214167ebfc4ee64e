package runtrue.roof.above;

import runtrue.ifc.Element;
import runtrue.roof.Interval;

/**
 * Something that stands on a plane's skin without passing through it.
 *
 * @param plane id
 * @param u extent across the fall, metres
 * @param v extent along the fall, metres
 * @param w from its lowest to its highest point above the skin, square to the plane, metres
 */
public record Fixture(String plane, Element element, Interval u, Interval v, Interval w) {}
