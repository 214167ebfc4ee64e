/** What both workbooks begin and end with. Start with {@link runtrue.report.cover.Cover}. */
@NullMarked
package runtrue.report.cover;

import org.jspecify.annotations.NullMarked;
