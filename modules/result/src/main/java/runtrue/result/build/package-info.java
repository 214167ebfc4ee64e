/**
 * The way from what the earlier stages hand on to a {@link runtrue.result.CheckResult}. Start with
 * {@link runtrue.result.build.ResultBuilder}.
 */
@NullMarked
package runtrue.result.build;

import org.jspecify.annotations.NullMarked;
