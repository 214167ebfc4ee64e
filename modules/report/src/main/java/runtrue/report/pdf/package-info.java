/**
 * Non-conformances as a document to be attached to requests for information: one page each. Start with {@link
 * runtrue.report.pdf.FindingsPdf}.
 */
@NullMarked
package runtrue.report.pdf;

import org.jspecify.annotations.NullMarked;
