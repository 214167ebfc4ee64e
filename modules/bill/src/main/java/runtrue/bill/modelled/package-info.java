/**
 * Counts that models give by themselves, fasteners and single sheets, beside those of the bill: start with {@link
 * runtrue.bill.modelled.ModelledCounts}. The bill never takes anything from them.
 */
@NullMarked
package runtrue.bill.modelled;

import org.jspecify.annotations.NullMarked;
