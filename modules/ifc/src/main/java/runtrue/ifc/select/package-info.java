/**
 * Which elements of a model are roof and which may carry it: start with {@link runtrue.ifc.select.ElementFinder}. What
 * counts as which is data, a {@link runtrue.ifc.select.Selection}, so that a drop's settings can say otherwise.
 */
@NullMarked
package runtrue.ifc.select;

import org.jspecify.annotations.NullMarked;
