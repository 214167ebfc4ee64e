/**
 * How a STEP file is mapped, indexed and decoded; nothing outside this module calls it. Start with {@link
 * IndexedStepFile}, then {@link SegmentScan} for the index and {@link RecordReader} for the values.
 */
@NullMarked
package runtrue.step.internal;

import org.jspecify.annotations.NullMarked;
