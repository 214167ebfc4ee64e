/**
 * From opened models to read elements: which are roof, which may carry it, and what could not be read. Start with {@link
 * runtrue.roof.read.DropElements#read}.
 */
@NullMarked
package runtrue.roof.read;

import org.jspecify.annotations.NullMarked;
