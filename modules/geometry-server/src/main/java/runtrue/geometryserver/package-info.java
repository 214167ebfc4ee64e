/**
 * A second geometry engine beside the built-in reader: the IfcOpenShell program, started by its Java binding, fed with
 * reduced files and watched. Start with {@link runtrue.geometryserver.SecondEngine}.
 */
@NullMarked
package runtrue.geometryserver;

import org.jspecify.annotations.NullMarked;
