@NullMarked
package runtrue.report.drawing.plan;

import org.jspecify.annotations.NullMarked;
