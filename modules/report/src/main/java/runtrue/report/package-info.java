/**
 * The workbooks of a check. Start with {@link runtrue.report.Workbooks}; it reads nothing but the result.
 */
@NullMarked
package runtrue.report;

import org.jspecify.annotations.NullMarked;
