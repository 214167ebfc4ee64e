/**
 * Plan drawings of roofs. Start with {@link runtrue.report.drawing.RoofPlans}; it reads nothing but the result.
 */
@NullMarked
package runtrue.report.drawing;

import org.jspecify.annotations.NullMarked;
