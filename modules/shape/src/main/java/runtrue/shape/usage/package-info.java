/**
 * Bodies that a model does not draw but states by a material usage and a curve, assumed and said to be so: start with
 * {@link runtrue.shape.usage.UsageBody}.
 */
@NullMarked
package runtrue.shape.usage;

import org.jspecify.annotations.NullMarked;
