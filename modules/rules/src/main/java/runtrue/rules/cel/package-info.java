/**
 * Expressions over facts, checked for types and dimensions before any model is read: start with {@link runtrue.rules.cel.ExpressionCompiler}. What facts there are is said in {@link runtrue.rules.cel.FactCatalogue}.
 */
@NullMarked
package runtrue.rules.cel;

import org.jspecify.annotations.NullMarked;
