/**
 * What is amiss with the models of a drop, as far as the roof depends on it: start with
 * {@link runtrue.roof.health.ModelHealth}. {@link runtrue.roof.health.HealthKind} holds all that is looked for.
 */
@NullMarked
package runtrue.roof.health;

import org.jspecify.annotations.NullMarked;
