/** Overlays of flat areas. Start with {@link runtrue.roof.flat.Overlays}. */
@NullMarked
package runtrue.roof.flat;

import org.jspecify.annotations.NullMarked;
