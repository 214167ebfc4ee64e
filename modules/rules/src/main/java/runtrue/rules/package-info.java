/**
 * Judges a roof by a declarative rule set: load with {@link runtrue.rules.RuleSets}, {@link runtrue.rules.RoofSystems}
 * and {@link runtrue.rules.SettingsFiles}, then call {@link runtrue.rules.judge.Judge}. How to write rules is told in
 * rules/README.md.
 */
@NullMarked
package runtrue.rules;

import org.jspecify.annotations.NullMarked;
