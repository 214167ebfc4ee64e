/**
 * Quantities of a laid-out roof: start with {@link runtrue.bill.Bills}. What the model or the system does not state is
 * listed as missing, never counted as 0.
 */
@NullMarked
package runtrue.bill;

import org.jspecify.annotations.NullMarked;
