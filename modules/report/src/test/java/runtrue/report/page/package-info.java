@NullMarked
package runtrue.report.page;

import org.jspecify.annotations.NullMarked;
