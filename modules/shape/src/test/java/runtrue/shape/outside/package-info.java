/**
 * Shapes against an independent geometry program: the IfcOpenShell executable of 2016 that its Java binding brings along.
 * Start with {@link runtrue.shape.outside.GeometryProgram}.
 */
@NullMarked
package runtrue.shape.outside;

import org.jspecify.annotations.NullMarked;
