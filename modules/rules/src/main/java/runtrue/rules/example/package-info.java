/**
 * Examples that rules carry: facts in, outcome out. Start with {@link runtrue.rules.example.RuleBooks} to read a rule set with
 * its examples, and with {@link runtrue.rules.example.ExampleRun} to see whether they hold.
 */
@NullMarked
package runtrue.rules.example;

import org.jspecify.annotations.NullMarked;
