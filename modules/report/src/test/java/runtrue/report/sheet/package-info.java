@NullMarked
package runtrue.report.sheet;

import org.jspecify.annotations.NullMarked;
