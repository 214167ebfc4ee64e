package runtrue.rules.concede;

import java.time.LocalDate;
import java.util.Optional;
import runtrue.rules.Quantity;

/**
 * A non-conformance accepted by somebody.
 *
 * @param finding id of the finding
 * @param by who accepts it
 * @param why for what reason, under which reference
 * @param until last day on which it holds; empty when it holds until it is withdrawn
 * @param upTo worst measured value that is accepted; empty for findings that measure nothing
 * @param from file and line it stands in
 */
public record Concession(
        String finding, String by, String why, Optional<LocalDate> until, Optional<Quantity> upTo, String from) {}
