/**
 * Quantities of a laid-out roof, taken off by a build-up: start with {@link runtrue.bill.Bills}. What the model, the system
 * or the build-up does not state is listed as missing, never counted as 0.
 */
@NullMarked
package runtrue.bill;

import org.jspecify.annotations.NullMarked;
