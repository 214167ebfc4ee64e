/**
 * Roofs in true place and size for setting out, as Drawing Exchange Format (DXF). Start with
 * {@link runtrue.report.setout.SetOutDrawing}; it reads nothing but the result.
 */
@NullMarked
package runtrue.report.setout;

import org.jspecify.annotations.NullMarked;
