package runtrue.report.findings;

import java.util.List;
import java.util.Optional;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.Outcome;
import runtrue.result.change.ChangeKind;
import runtrue.result.change.Changes;
import runtrue.result.change.Changes.OfFinding;

/** Findings that are new, changed or gone since an earlier result, and what else the two differ in. */
final class ChangesSheet {
    private ChangesSheet() {}

    static Page page(Changes changes) {
        return new Table<>(
                        "Changes",
                        1,
                        columns(),
                        changes.findings(),
                        "No finding is new, changed or gone since the run of " + changes.earlierRunStamp() + ".")
                .page();
    }

    private static List<Column<OfFinding>> columns() {
        return List.of(
                new Column<>("Change", "", 12, false, f -> kind(f.kind())),
                Column.wrapped("Rule", 28, OfFinding::title),
                Column.wrapped("Of what", 30, OfFinding::subject),
                Column.wrapped("What is different", 52, OfFinding::words),
                Column.text("Before", 18, f -> word(f.before(), f.kind() == ChangeKind.NEW)),
                Column.text("Now", 18, f -> word(f.now(), f.kind() == ChangeKind.GONE)),
                Column.text("Severity", 11, f -> f.severity().label()),
                Column.text("Finding", 22, OfFinding::id));
    }

    /** By sign, word and tint, so that it does not depend on colour alone. */
    private static Cell kind(ChangeKind kind) {
        return switch (kind) {
            case NEW -> Cell.of("+ new", Look.DOES_NOT_CONFORM);
            case CHANGED -> Cell.of("~ changed", Look.NOT_ASSESSED);
            case GONE -> Cell.of("− gone", Look.TEXT);
        };
    }

    private static String word(Optional<Outcome> outcome, boolean mayBeAbsent) {
        return outcome.map(Outcome::label).orElse(mayBeAbsent ? "not judged" : "");
    }
}
