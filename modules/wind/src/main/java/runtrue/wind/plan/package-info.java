/**
 * Geometry in plan that the standards share: outer edges, strips along them, places where zones overlap. Start with
 * {@link runtrue.wind.plan.PlanOutline}.
 */
@NullMarked
package runtrue.wind.plan;

import org.jspecify.annotations.NullMarked;
