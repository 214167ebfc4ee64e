/**
 * The result of a check as one versioned record tree, {@code runtrue-result/3}: all that reports, comparison between drops
 * and other programs read. Start with {@link runtrue.result.CheckResult}; {@code runtrue.result.build} makes it and
 * {@code runtrue.result.json} writes and reads it.
 */
@NullMarked
package runtrue.result;

import org.jspecify.annotations.NullMarked;
