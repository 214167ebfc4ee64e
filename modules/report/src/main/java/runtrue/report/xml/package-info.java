/** What documents in XML have in common: see {@link runtrue.report.xml.LegalText}. */
@NullMarked
package runtrue.report.xml;

import org.jspecify.annotations.NullMarked;
