/**
 * Issue files in the BIM Collaboration Format of buildingSMART, versions 2.1 and 3.0: one topic for each finding, with the
 * place, the elements and a picture. Start with {@link runtrue.report.bcf.IssueFile}.
 */
@NullMarked
package runtrue.report.bcf;

import org.jspecify.annotations.NullMarked;
