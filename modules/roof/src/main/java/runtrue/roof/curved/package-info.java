/**
 * Roofs that are curved one way, developed along their arc. Start with {@link runtrue.roof.curved.CurvedReader}, which
 * makes one plane of the facets of a barrel, or says what other kind of curved roof they are.
 */
@NullMarked
package runtrue.roof.curved;

import org.jspecify.annotations.NullMarked;
