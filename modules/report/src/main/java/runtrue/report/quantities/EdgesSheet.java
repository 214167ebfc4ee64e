package runtrue.report.quantities;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runtrue.report.cover.Columns;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.EdgeResult;

/** One row an edge: what flashings are ordered from. */
final class EdgesSheet {
    private EdgesSheet() {}

    static Page page(CheckResult result) {
        boolean steps = result.edges().stream().anyMatch(e -> e.stepMetres().isPresent());
        return new Table<>("Edges", 1, columns(new PlaneNames(result), steps), result.edges(), "No edge was found.")
                .page();
    }

    private static List<Column<EdgeResult>> columns(PlaneNames names, boolean steps) {
        Stream<Column<EdgeResult>> identity = Stream.of(
                Column.text("Kind", 16, EdgeResult::kind),
                Column.metres("Length", EdgeResult::lengthMetres),
                Column.<EdgeResult>wrapped("Planes", 34, e -> names.of(e.planes()))
                        .linked(e -> names.row(e.planes())),
                Column.<EdgeResult>degrees("Angle between normals", EdgeResult::angleDegrees)
                        .wide(14));
        Stream<Column<EdgeResult>> step =
                steps ? Stream.of(Column.millimetres("Height of step", EdgeResult::stepMetres)) : Stream.empty();
        Stream<Column<EdgeResult>> id = Stream.of(Column.text("Id", 24, EdgeResult::id));
        Stream<Column<EdgeResult>> ends = Stream.concat(
                Columns.<EdgeResult>place("From ", e -> Optional.of(e.from())).stream(),
                Columns.<EdgeResult>place("To ", e -> Optional.of(e.to())).stream());
        return Stream.of(identity, step, id, ends).flatMap(s -> s).toList();
    }
}
