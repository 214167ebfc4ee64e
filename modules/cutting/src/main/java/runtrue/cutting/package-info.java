/**
 * Pieces cut from stock lengths with as few bars as can be: start with {@link runtrue.cutting.Cutting}. Whole millimetres,
 * work that is counted and no chance, so that the answer is the same on every machine.
 */
@NullMarked
package runtrue.cutting;

import org.jspecify.annotations.NullMarked;
