@NullMarked
package runtrue.report.page.data;

import org.jspecify.annotations.NullMarked;
