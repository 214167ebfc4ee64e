/**
 * Writes the Information Delivery Specification 1.0, buildingSMART's standard for saying what a model has to hold. Start with
 * {@link runtrue.ids.IdsFile}.
 */
@NullMarked
package runtrue.ids;

import org.jspecify.annotations.NullMarked;
