/** Strips of one cover width along the fall. Start with {@link runtrue.roof.sheet.SheetLayout}. */
@NullMarked
package runtrue.roof.sheet;

import org.jspecify.annotations.NullMarked;
