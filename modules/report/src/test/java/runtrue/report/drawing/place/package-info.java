@NullMarked
package runtrue.report.drawing.place;

import org.jspecify.annotations.NullMarked;
