@NullMarked
package runtrue.report;

import org.jspecify.annotations.NullMarked;
