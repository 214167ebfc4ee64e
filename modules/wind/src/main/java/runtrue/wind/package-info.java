/**
 * Wind on roofs by published standards: from outlines in plan and numbers of the site to zones, coefficients and
 * pressures. Start with {@link runtrue.wind.WindPressures}, then
 * {@link runtrue.wind.GoverningZone} and {@link runtrue.wind.ClipDemand}.
 */
@NullMarked
package runtrue.wind;

import org.jspecify.annotations.NullMarked;
