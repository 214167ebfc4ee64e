package runtrue.bill;

import java.util.OptionalDouble;

/**
 * A figure about the whole order that is not itself ordered.
 *
 * @param value in {@code unit}; empty where it could not be worked out, {@code remark} says why
 * @param verdict {@code fits}, {@code does not fit} or {@code not assessed}; empty where nothing is compared
 * @param remark how it was worked out, or why not
 */
public record BillFigure(String what, OptionalDouble value, String unit, String verdict, String remark) {}
