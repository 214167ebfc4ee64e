/**
 * What a quantity in a file may be written in: start with {@link runtrue.rules.units.Quantities}. The one list of symbols is {@link runtrue.rules.units.Unit}.
 */
@NullMarked
package runtrue.rules.units;

import org.jspecify.annotations.NullMarked;
