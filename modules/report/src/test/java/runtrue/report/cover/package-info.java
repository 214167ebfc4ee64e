@NullMarked
package runtrue.report.cover;

import org.jspecify.annotations.NullMarked;
