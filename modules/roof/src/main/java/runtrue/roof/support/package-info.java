/**
 * What carries the sheets: members below a plane, chained to lines, and the spans between them. Start with {@link
 * runtrue.roof.support.SupportFinder}.
 */
@NullMarked
package runtrue.roof.support;

import org.jspecify.annotations.NullMarked;
