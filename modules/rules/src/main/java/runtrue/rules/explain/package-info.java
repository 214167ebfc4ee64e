/**
 * Says in steps how a rule works and how an outcome came about. Start with {@link runtrue.rules.explain.FindingExplanation}; both
 * kinds give an {@link runtrue.rules.explain.Explanation}, which is plain records and lines of text.
 */
@NullMarked
package runtrue.rules.explain;

import org.jspecify.annotations.NullMarked;
