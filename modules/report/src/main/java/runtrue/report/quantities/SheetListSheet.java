package runtrue.report.quantities;

import java.util.List;
import java.util.function.Predicate;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;
import runtrue.result.PlaneResult.Sheet;

/** One row a sheet, in the order of laying. */
final class SheetListSheet {
    private SheetListSheet() {}

    static Page page(CheckResult result) {
        List<Placed> sheets = result.planes().stream()
                .flatMap(p -> p.sheets().stream().map(s -> new Placed(p, s)))
                .toList();
        return new Table<>("Sheet list", 2, columns(new PlaneNames(result)), sheets, "No sheet was laid out.").page();
    }

    private static List<Column<Placed>> columns(PlaneNames names) {
        return List.of(
                Column.<Placed>wrapped("Plane", 30, x -> x.plane().name())
                        .linked(x -> names.row(x.plane().id())),
                Column.count("Strip", p -> p.sheet().number()),
                Column.metres("Length", p -> p.sheet().lengthMetres()),
                Column.<Placed>metres("Order length", p -> p.sheet().orderMetres())
                        .wide(15),
                Column.metres("Width", p -> p.sheet().u().lengthMetres()),
                Column.squareMetres("Net area", p -> p.sheet().areaSquareMetres()),
                Column.<Placed>metres(
                                "Across the fall, from", p -> p.sheet().u().fromMetres())
                        .wide(15),
                Column.<Placed>metres("Across the fall, to", p -> p.sheet().u().toMetres())
                        .wide(15),
                Column.<Placed>metres("Up the fall, from", p -> p.sheet().v().fromMetres())
                        .wide(15),
                Column.<Placed>metres("Up the fall, to", p -> p.sheet().v().toMetres())
                        .wide(15),
                flag("Trimmed", p -> p.trimmed()),
                flag("Tapered end", p -> p.tapered()),
                flag("Cut by opening", p -> p.cut()));
    }

    private static Column<Placed> flag(String header, Predicate<Sheet> flag) {
        return Column.text(header, 12, p -> flag.test(p.sheet()) ? "yes" : "");
    }

    private record Placed(PlaneResult plane, Sheet sheet) {}
}
