/**
 * Profiles swept along curves, about axes and between sections, as closed meshes. Start with
 * {@link runtrue.shape.sweep.SweepReader#read}.
 */
@NullMarked
package runtrue.shape.sweep;

import org.jspecify.annotations.NullMarked;
