/** The sheets of {@code quantities.xlsx}. Start with {@link runtrue.report.quantities.Quantities}. */
@NullMarked
package runtrue.report.quantities;

import org.jspecify.annotations.NullMarked;
