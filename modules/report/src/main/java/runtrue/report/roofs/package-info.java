/**
 * The plan of each building's roof as a sheet: a picture from above with a number on each plane, and the planes by number
 * beside it. Start with {@link runtrue.report.roofs.RoofPlanSheet}.
 */
@NullMarked
package runtrue.report.roofs;

import org.jspecify.annotations.NullMarked;
