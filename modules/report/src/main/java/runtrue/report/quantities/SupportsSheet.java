package runtrue.report.quantities;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import runtrue.report.cover.Columns;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;
import runtrue.result.PlaneResult.Piece;
import runtrue.result.PlaneResult.SupportLine;

/** One row a member of a support line, with how it was recognised. */
final class SupportsSheet {
    /** Up to the sizes of the section; class, file and coordinates are for the screen. */
    private static final int PRINTED = 12;

    private SupportsSheet() {}

    static Page page(CheckResult result) {
        List<Placed> pieces = result.planes().stream()
                .flatMap(p ->
                        p.supports().stream().flatMap(l -> l.pieces().stream().map(piece -> new Placed(p, l, piece))))
                .toList();
        return new Table<>(
                        "Supports",
                        2,
                        columns(new PlaneNames(result)),
                        PRINTED,
                        pieces,
                        "No support was found under any plane.")
                .page();
    }

    private static List<Column<Placed>> columns(PlaneNames names) {
        Stream<Column<Placed>> identity = Stream.of(
                Column.<Placed>wrapped("Plane", 28, x -> x.plane().name())
                        .linked(x -> names.row(x.plane().id())),
                Column.count("Line from the eave", p -> p.line().number()),
                Column.<Placed>metres("Up the fall", p -> p.line().vMetres()),
                Column.wrapped("Grid", 25, p -> p.piece().gridPlace()),
                Column.wrapped("Member", 26, p -> p.piece().element().name()),
                Column.text("GlobalId", 30, p -> p.piece().element().globalId()),
                Column.wrapped(
                        "Recognised as support", 32, p -> p.piece().element().evidence()),
                Column.millimetres(
                        "Contact face under skin",
                        p -> OptionalDouble.of(-p.piece().contactMetres())),
                Column.millimetres("Off contact plane, left end", p -> p.piece().deviationFromMetres()),
                Column.millimetres(
                        "Off contact plane, right end", p -> p.piece().deviationToMetres()),
                Column.millimetres("Flange", p -> OptionalDouble.of(p.piece().flangeMetres())),
                Column.millimetres("Depth", p -> OptionalDouble.of(p.piece().depthMetres())),
                Column.millimetres("Wall", p -> p.piece().thicknessMetres()),
                Column.text("Class", 16, p -> p.piece().element().ifcClass()),
                Column.wrapped("File", 28, p -> p.piece().element().file()));
        Stream<Column<Placed>> ends = Stream.concat(
                Columns.<Placed>place("From ", p -> Optional.of(p.piece().from())).stream(),
                Columns.<Placed>place("To ", p -> Optional.of(p.piece().to())).stream());
        return Stream.concat(identity, ends).toList();
    }

    private record Placed(PlaneResult plane, SupportLine line, Piece piece) {}
}
