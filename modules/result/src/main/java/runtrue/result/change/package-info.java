/**
 * What is different from an earlier result of the same drop: {@link runtrue.result.change.Comparing} tells it from two
 * results. Start there.
 */
@NullMarked
package runtrue.result.change;

import org.jspecify.annotations.NullMarked;
