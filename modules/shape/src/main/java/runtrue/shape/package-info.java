/**
 * Shapes of building elements as planar faces in world metres. Start with {@link runtrue.shape.ShapeReader#of}; what an
 * element's body is built from lies in the packages below, by topic.
 */
@NullMarked
package runtrue.shape;

import org.jspecify.annotations.NullMarked;
