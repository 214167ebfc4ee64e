/** The sheets of {@code non-conformances.xlsx}. Start with {@link runtrue.report.findings.Findings}. */
@NullMarked
package runtrue.report.findings;

import org.jspecify.annotations.NullMarked;
