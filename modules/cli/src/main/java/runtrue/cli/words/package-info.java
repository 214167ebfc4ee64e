/** Options as all commands state and read them: {@link runtrue.cli.words.Options}. */
@NullMarked
package runtrue.cli.words;

import org.jspecify.annotations.NullMarked;
