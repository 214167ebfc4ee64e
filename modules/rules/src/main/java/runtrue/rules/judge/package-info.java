/**
 * Turns a roof into subjects with facts and says what each rule makes of them: start with {@link runtrue.rules.judge.Judge}. Missing data leads to "not assessed", never to "conforms".
 */
@NullMarked
package runtrue.rules.judge;

import org.jspecify.annotations.NullMarked;
