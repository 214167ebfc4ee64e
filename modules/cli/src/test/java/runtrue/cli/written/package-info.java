/**
 * Roofs written in every representation and read back: start with {@link runtrue.cli.written.RepresentationsProperties}.
 */
@NullMarked
package runtrue.cli.written;

import org.jspecify.annotations.NullMarked;
