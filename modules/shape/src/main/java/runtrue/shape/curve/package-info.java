/**
 * Curves in space, in file units, as chains of pieces that can be evaluated anywhere and cut into chords. Start with
 * {@link runtrue.shape.curve.CurveReader#read}, or {@link runtrue.shape.curve.CurveReader#between} for the part of an
 * edge's curve between two corners.
 */
@NullMarked
package runtrue.shape.curve;

import org.jspecify.annotations.NullMarked;
