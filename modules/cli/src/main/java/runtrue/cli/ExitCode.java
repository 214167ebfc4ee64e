package runtrue.cli;

/**
 * Exit codes, as they stand in the help. Where several apply, the first of {@link #USAGE}, {@link #FAILED},
 * {@link #NON_CONFORMING}, {@link #INCOMPLETE} wins: a run that failed says nothing reliable about the rest, and a
 * known fault matters more than a gap.
 */
final class ExitCode {
    /** Every plane was read and judged, and conforms (or its non-conformances are conceded). */
    static final int CONFORMING = 0;
    /** A fault of the program, results that could not be written, or not one drop could be read. */
    static final int FAILED = 1;
    /** The command cannot be carried out as given; nothing was checked. */
    static final int USAGE = 2;
    /** At least one rule is not met. */
    static final int NON_CONFORMING = 3;
    /** No rule is known to be broken, but something was not read or not assessed. */
    static final int INCOMPLETE = 4;

    private ExitCode() {}
}
