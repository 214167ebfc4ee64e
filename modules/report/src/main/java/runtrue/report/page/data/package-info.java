/**
 * What a page shows of a result, as JSON that may stand within a script element. Start with
 * {@link runtrue.report.page.data.PageData}.
 */
@NullMarked
package runtrue.report.page.data;

import org.jspecify.annotations.NullMarked;
