/**
 * Build-ups: the layers and fixings from the support up, each with its quantity rule. Start with
 * {@link runtrue.rules.buildup.BuildUps}, which reads one; what its expressions may use is said in
 * {@link runtrue.rules.buildup.LayoutFacts}.
 */
@NullMarked
package runtrue.rules.buildup;

import org.jspecify.annotations.NullMarked;
