package runtrue.roof.bearing;

import runtrue.ifc.Element;
import runtrue.roof.Interval;

/**
 * Something near the supports' contact plane that is no support.
 *
 * @param above how far its highest point within the sheeted area is above the contact plane, metres; negative below
 * @param u extent across the fall, metres
 * @param v extent along the fall, metres
 */
public record NearThing(Element element, Standing standing, double above, Interval u, Interval v) {}
