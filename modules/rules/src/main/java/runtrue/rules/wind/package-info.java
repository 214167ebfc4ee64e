/**
 * Zones of a roof and what the wind does on them: by a standard, or as the project's engineer gives it. Start with
 * {@link runtrue.rules.wind.RoofZones}.
 */
@NullMarked
package runtrue.rules.wind;

import org.jspecify.annotations.NullMarked;
