package runtrue.cli;

import java.util.Optional;
import runtrue.drop.Drop;
import runtrue.rules.explain.Explanation;

/** Checks drops, one after another, all with the same options. What stands between the command line and the work. */
@FunctionalInterface
interface DropCheck {
    /**
     * Reads, lays out and judges one drop, and prepares its files. Nothing is written before all of this is done.
     *
     * @param progress may be told from any thread
     * @throws CheckException when the drop cannot be read, or the options turn out to be wrong. Anything else that is
     *     thrown is taken as a fault of the program.
     */
    CheckedDrop check(Drop drop, Progress progress);

    /**
     * How a finding of the drop came about: it is read, laid out and judged again. Empty when it has no such finding.
     *
     * @throws CheckException as {@link #check}
     */
    default Optional<Explanation> explain(Drop drop, String finding) {
        throw new UnsupportedOperationException("this check explains nothing: " + drop.name() + ", " + finding);
    }

    /** Makes the check for one run. */
    @FunctionalInterface
    interface Factory {
        /**
         * Called once, before the first drop is opened. May compile the rule set beside the reading of the first model
         * and complain later.
         *
         * @throws CheckException when a rule set, system or setting is wrong
         */
        DropCheck with(CheckOptions options);
    }
}
