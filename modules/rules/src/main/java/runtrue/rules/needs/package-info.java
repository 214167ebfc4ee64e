/** What the rules in force need from models. Start with {@link runtrue.rules.needs.ModelNeeds}. */
@NullMarked
package runtrue.rules.needs;

import org.jspecify.annotations.NullMarked;
