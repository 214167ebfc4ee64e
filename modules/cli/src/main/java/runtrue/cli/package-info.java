/**
 * The command line: parses, calls one {@link runtrue.cli.DropCheck} for each drop, and turns what comes back into files,
 * a table and an exit code. Start with {@link runtrue.cli.CheckCommand}.
 */
@NullMarked
package runtrue.cli;

import org.jspecify.annotations.NullMarked;
