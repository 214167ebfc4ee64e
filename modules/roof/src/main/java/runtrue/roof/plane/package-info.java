/**
 * From skin faces to planes: faces in one plane are joined across joints, elements and files. Start with {@link
 * runtrue.roof.plane.PlaneJoiner}.
 */
@NullMarked
package runtrue.roof.plane;

import org.jspecify.annotations.NullMarked;
