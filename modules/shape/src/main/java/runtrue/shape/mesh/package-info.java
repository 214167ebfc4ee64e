/**
 * Planar faces over shared points: welding, orientation, and merging of coplanar neighbours. Start with
 * {@link runtrue.shape.mesh.Shells#solid}, which turns faces as a file gives them into a {@link runtrue.shape.mesh.Mesh}.
 */
@NullMarked
package runtrue.shape.mesh;

import org.jspecify.annotations.NullMarked;
