/**
 * Sheets that one cut serves two of: start with {@link runtrue.bill.offcut.Offcuts}. A proposal only; the bill orders each
 * sheet by itself.
 */
@NullMarked
package runtrue.bill.offcut;

import org.jspecify.annotations.NullMarked;
