/**
 * A small writer of IFC files in the ISO 10303-21 text form: just what the samples need, in three schemas. Start from
 * {@link runtrue.samples.ifc.IfcFile}.
 */
@NullMarked
package runtrue.samples.ifc;

import org.jspecify.annotations.NullMarked;
