package runtrue.cli;

import java.util.Optional;

/**
 * How one drop ended.
 *
 * @param checked empty when the drop could not be read, or the program failed
 * @param ourFault whether the program failed; its results are then missing for no fault of the drop
 */
record DropReport(String drop, Optional<CheckedDrop> checked, boolean ourFault) {
    static DropReport done(String drop, CheckedDrop checked) {
        return new DropReport(drop, Optional.of(checked), false);
    }

    static DropReport unreadable(String drop) {
        return new DropReport(drop, Optional.empty(), false);
    }

    static DropReport failed(String drop) {
        return new DropReport(drop, Optional.empty(), true);
    }
}
