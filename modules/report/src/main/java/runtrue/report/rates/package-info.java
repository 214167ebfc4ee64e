/** Rate files, as CSV or as a workbook. Start with {@link runtrue.report.rates.RateFiles}. */
@NullMarked
package runtrue.report.rates;

import org.jspecify.annotations.NullMarked;
