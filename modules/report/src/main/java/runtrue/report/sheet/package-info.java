/**
 * Pages of a workbook, independent of what stands on them: tables by {@link runtrue.report.sheet.Table}, written by
 * {@link runtrue.report.sheet.BookWriter}. The only package that knows the spreadsheet library.
 */
@NullMarked
package runtrue.report.sheet;

import org.jspecify.annotations.NullMarked;
