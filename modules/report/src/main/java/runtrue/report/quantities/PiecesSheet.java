package runtrue.report.quantities;

import java.util.List;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.BillResult.Line;
import runtrue.result.BillResult.Pieces;
import runtrue.result.CheckResult;

/** Lengths that flashings and members are needed in, laps included. */
final class PiecesSheet {
    private PiecesSheet() {}

    private record Row(Line line, Pieces pieces) {}

    static Page page(CheckResult result) {
        List<Row> rows = result.bill().lines().stream()
                .flatMap(l -> l.pieces().stream().map(p -> new Row(l, p)))
                .toList();
        return new Table<>("Piece lengths", 1, columns(), rows, "Nothing is cut from stock lengths.").page();
    }

    private static List<Column<Row>> columns() {
        return List.of(
                Column.wrapped("Item", 44, r -> r.line().description()),
                Column.<Row>metres("Length needed", r -> r.pieces().lengthMetres())
                        .wide(15),
                Column.count("Count", r -> r.pieces().count()),
                Column.<Row>metres(
                                "Total length",
                                r -> r.pieces().count() * r.pieces().lengthMetres())
                        .wide(15),
                Column.<Row>metres("Stock length", r -> r.line().lengthMetres()).wide(15));
    }
}
