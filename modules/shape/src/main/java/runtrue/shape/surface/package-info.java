/**
 * Curved surfaces and their trimmed faces, in file units, made into triangles. Start with
 * {@link runtrue.shape.surface.FaceNet}, which takes a face's surface (from
 * {@link runtrue.shape.surface.SurfaceReader}) and its loops.
 */
@NullMarked
package runtrue.shape.surface;

import org.jspecify.annotations.NullMarked;
