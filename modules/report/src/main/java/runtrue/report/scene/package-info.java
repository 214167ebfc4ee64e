/**
 * Pictures of a roof around one finding, in parallel projection: {@link runtrue.report.scene.Views} chooses where to stand,
 * {@link runtrue.report.scene.Scene} draws.
 */
@NullMarked
package runtrue.report.scene;

import org.jspecify.annotations.NullMarked;
