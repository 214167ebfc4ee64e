/**
 * Writes the models under sample-models/, an invented trading estate, and holds the figures expected of them. Start from
 * {@link runtrue.samples.SampleModels}; the command is {@link runtrue.samples.WriteSamples}.
 */
@NullMarked
package runtrue.samples;

import org.jspecify.annotations.NullMarked;
