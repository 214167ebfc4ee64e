/**
 * Rule sets that extend others: what they change, switch off and add. Start with {@link runtrue.rules.extend.Layers}, which puts
 * the files of a chain together into one text that still knows where each part of it stands.
 */
@NullMarked
package runtrue.rules.extend;

import org.jspecify.annotations.NullMarked;
