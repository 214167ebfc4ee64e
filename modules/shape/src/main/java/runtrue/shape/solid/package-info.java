/**
 * Representation items of an IFC model made into meshes. Start with {@link runtrue.shape.solid.ItemReader#read}.
 */
@NullMarked
package runtrue.shape.solid;

import org.jspecify.annotations.NullMarked;
