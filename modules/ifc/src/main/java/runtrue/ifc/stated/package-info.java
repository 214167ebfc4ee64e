/**
 * What a model itself says about pitch, area, length and thickness, in SI. Start with
 * {@link runtrue.ifc.stated.StatedQuantities}; nothing here knows the geometry.
 */
@NullMarked
package runtrue.ifc.stated;

import org.jspecify.annotations.NullMarked;
