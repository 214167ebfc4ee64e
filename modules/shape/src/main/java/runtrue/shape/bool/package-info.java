/**
 * Cutting and combining meshes. Start with {@link runtrue.shape.bool.PlaneCut} for half-spaces and
 * {@link runtrue.shape.bool.Combination} for solids.
 */
@NullMarked
package runtrue.shape.bool;

import org.jspecify.annotations.NullMarked;
