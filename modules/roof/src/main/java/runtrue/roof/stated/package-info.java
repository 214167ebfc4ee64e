/**
 * What the model states of its roof beside what the geometry gives. Start with {@link runtrue.roof.stated.StatedValues};
 * geometry wins, and a difference is named by {@link runtrue.roof.stated.Mistake} where its kind can be told.
 */
@NullMarked
package runtrue.roof.stated;

import org.jspecify.annotations.NullMarked;
