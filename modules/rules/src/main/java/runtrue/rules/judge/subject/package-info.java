/**
 * What rules are applied to on a plane, with its facts. Start with {@link runtrue.rules.judge.subject.Subject}; {@code
 * PlaneParts} and {@code BearingParts} make those of one plane.
 */
@NullMarked
package runtrue.rules.judge.subject;

import org.jspecify.annotations.NullMarked;
