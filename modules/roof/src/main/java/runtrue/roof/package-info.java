/**
 * Roofs as a roofer sees them: planes, edges, sheets, supports and spans, in metres. Start with {@link
 * runtrue.roof.Roofs}, which turns read elements into a {@link runtrue.roof.Roof}.
 */
@NullMarked
package runtrue.roof;

import org.jspecify.annotations.NullMarked;
