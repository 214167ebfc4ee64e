package runtrue.report.findings;

import java.util.List;
import java.util.stream.Stream;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.ConcessionResult;

/** One row a concession; those that do not hold first, because their findings are back among the non-conformances. */
final class ConcessionsSheet {
    private ConcessionsSheet() {}

    static Page page(CheckResult result) {
        List<ConcessionResult> ordered = Stream.concat(
                        result.concessions().stream().filter(c -> !holds(c)),
                        result.concessions().stream().filter(ConcessionsSheet::holds))
                .toList();
        List<Column<ConcessionResult>> columns = columns();
        return new Table<>("Concessions", 1, columns, columns.size(), ordered, "No concession is stated for this drop.")
                .page();
    }

    private static boolean holds(ConcessionResult concession) {
        return concession.state().equals("holds");
    }

    private static List<Column<ConcessionResult>> columns() {
        return List.of(
                Column.wrapped("Finding", 26, ConcessionResult::finding),
                Column.text("State", 14, c -> (holds(c) ? "△ " : "▲ ") + c.state()),
                Column.wrapped("Accepted by", 26, ConcessionResult::by),
                Column.wrapped("Why", 44, ConcessionResult::why),
                Column.text("Until", 12, ConcessionResult::until),
                Column.text("Up to", 12, ConcessionResult::upTo),
                Column.wrapped("What became of it", 50, ConcessionResult::remark),
                Column.wrapped("Stated in", 26, ConcessionResult::from));
    }
}
