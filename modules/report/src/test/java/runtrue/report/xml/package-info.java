@NullMarked
package runtrue.report.xml;

import org.jspecify.annotations.NullMarked;
