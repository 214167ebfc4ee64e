package runtrue.cli;

import java.util.List;
import java.util.Set;

/** Turns the ends of all drops into one exit code. */
final class Verdict {
    private Verdict() {}

    /**
     * One of {@link ExitCode}.
     *
     * @param passedOver whether something that was asked for held nothing to read; counts as unread
     */
    static int of(List<DropReport> drops, boolean passedOver, Set<FailOn> failOn) {
        if (drops.stream().anyMatch(DropReport::ourFault)
                || drops.stream().allMatch(d -> d.checked().isEmpty())) {
            return ExitCode.FAILED;
        }
        List<CheckedDrop> checked =
                drops.stream().flatMap(d -> d.checked().stream()).toList();
        if (failOn.contains(FailOn.NON_CONFORMING)
                && checked.stream().anyMatch(c -> c.counts().doesNotConform() > 0)) {
            return ExitCode.NON_CONFORMING;
        }
        boolean notAssessed = checked.stream().anyMatch(c -> c.counts().notAssessed() > 0);
        boolean unread =
                passedOver || checked.size() < drops.size() || checked.stream().anyMatch(c -> c.unread() > 0);
        boolean incomplete =
                (notAssessed && failOn.contains(FailOn.NOT_ASSESSED)) || (unread && failOn.contains(FailOn.UNREAD));
        return incomplete ? ExitCode.INCOMPLETE : ExitCode.CONFORMING;
    }
}
