/** Tests of the reader's parts; {@link PlainReader} is the slow, obvious reader that the real one is held against. */
@NullMarked
package runtrue.step.internal;

import org.jspecify.annotations.NullMarked;
