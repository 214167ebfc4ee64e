/**
 * Finds the model files that belong together and opens archives within bounds. Start with {@link runtrue.drop.Drops},
 * which turns the paths a person gives into {@link runtrue.drop.Drop}s.
 */
@NullMarked
package runtrue.drop;

import org.jspecify.annotations.NullMarked;
