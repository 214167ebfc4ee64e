/**
 * Where things come to lie on paper. Start with {@link runtrue.report.drawing.place.View}, which takes the world to the page;
 * {@link runtrue.report.drawing.place.Board} keeps labels off each other.
 */
@NullMarked
package runtrue.report.drawing.place;

import org.jspecify.annotations.NullMarked;
