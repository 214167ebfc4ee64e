/**
 * The page around a plan. Start with {@link runtrue.report.drawing.page.RoofPage}, which chooses paper and scale and puts
 * plan, view from the side, lists, legend and title together.
 */
@NullMarked
package runtrue.report.drawing.page;

import org.jspecify.annotations.NullMarked;
