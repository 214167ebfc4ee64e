/**
 * The roof seen from above, layer by layer. Start with {@link runtrue.report.drawing.plan.Plan}, which draws the layers in
 * order; {@link runtrue.report.drawing.plan.Roof} is what they draw.
 */
@NullMarked
package runtrue.report.drawing.plan;

import org.jspecify.annotations.NullMarked;
