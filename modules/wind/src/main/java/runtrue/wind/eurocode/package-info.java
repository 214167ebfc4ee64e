/** EN 1991-1-4:2005 with A1:2010. Start with {@link runtrue.wind.eurocode.EurocodePressures}. */
@NullMarked
package runtrue.wind.eurocode;

import org.jspecify.annotations.NullMarked;
