/**
 * How truly the supports of a plane lie in one plane, and what else is near it. Start with {@link
 * runtrue.roof.bearing.Bearing}; {@link runtrue.roof.bearing.TruePlanes} measures.
 */
@NullMarked
package runtrue.roof.bearing;

import org.jspecify.annotations.NullMarked;
