/**
 * {@code runtrue rules}: lists, tries and explains rules, and says what they need from models. Start with
 * {@link runtrue.cli.rules.RulesCommand}.
 */
@NullMarked
package runtrue.cli.rules;

import org.jspecify.annotations.NullMarked;
