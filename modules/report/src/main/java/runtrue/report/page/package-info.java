/**
 * One self-contained page per drop. Start with {@link runtrue.report.page.ReportPage}; what the page shows of a result is
 * chosen in {@code runtrue.report.page.data}, how it shows it stands as plain files in the resources of this package.
 */
@NullMarked
package runtrue.report.page;

import org.jspecify.annotations.NullMarked;
