/**
 * The result in forms that other programs take without knowing this one: {@link runtrue.report.exchange.CsvTables} and,
 * for build servers, {@link runtrue.report.exchange.TestCases}.
 */
@NullMarked
package runtrue.report.exchange;

import org.jspecify.annotations.NullMarked;
