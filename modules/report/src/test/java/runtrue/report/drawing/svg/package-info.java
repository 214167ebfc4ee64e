@NullMarked
package runtrue.report.drawing.svg;

import org.jspecify.annotations.NullMarked;
