/**
 * Figures expected of the sample models, worked by hand from their dimensions. Start from
 * {@link runtrue.samples.expected.ExpectedDrops}.
 */
@NullMarked
package runtrue.samples.expected;

import org.jspecify.annotations.NullMarked;
