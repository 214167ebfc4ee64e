/**
 * Curves as alignments of roads and railways have them, and with them roofs and beams that follow such a line. Start with
 * {@link runtrue.shape.curve.alignment.CurveSegments}; {@link runtrue.shape.curve.alignment.GradientCurve} lifts a line in
 * plan to its gradient.
 */
@NullMarked
package runtrue.shape.curve.alignment;

import org.jspecify.annotations.NullMarked;
