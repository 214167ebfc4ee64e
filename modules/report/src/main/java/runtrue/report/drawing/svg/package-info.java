/**
 * Marks on paper, in millimetres. Start with {@link runtrue.report.drawing.svg.Svg}; it writes shapes and text and nothing
 * that could run or be fetched.
 */
@NullMarked
package runtrue.report.drawing.svg;

import org.jspecify.annotations.NullMarked;
