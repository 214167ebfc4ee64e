/**
 * What rises above planes or is fixed on them: heights of walls that planes end against, and devices on the sheets. Start
 * with {@link runtrue.roof.above.Above}.
 */
@NullMarked
package runtrue.roof.above;

import org.jspecify.annotations.NullMarked;
