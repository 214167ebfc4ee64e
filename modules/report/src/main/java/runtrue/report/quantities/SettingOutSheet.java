package runtrue.report.quantities;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;
import runtrue.result.PlaneResult.SetOut;

/** Ways to set out the sheets of each plane: another verge or width of sheet may leave less waste, or no sliver. */
final class SettingOutSheet {
    private static final Map<String, String> WORDS = Map.of(
            "left", "full sheets from the left verge",
            "right", "full sheets from the right verge",
            "centred", "both outer strips alike");

    private SettingOutSheet() {}

    static Page page(CheckResult result) {
        List<Choice> choices = result.planes().stream()
                .flatMap(p -> p.setOuts().stream().map(s -> new Choice(p, s)))
                .toList();
        return new Table<>("Setting out", 2, columns(new PlaneNames(result)), choices, "No sheet was laid out.").page();
    }

    private static List<Column<Choice>> columns(PlaneNames names) {
        return List.of(
                Column.<Choice>wrapped("Plane", 30, c -> c.plane().name())
                        .linked(c -> names.row(c.plane().id())),
                Column.wrapped("Looking up the fall", 30, c -> WORDS.getOrDefault(c.is().setOut(), c.is().setOut())),
                Column.<Choice>metres("Cover", c -> c.is().coverWidthMetres()),
                Column.text("Remark", 32, Choice::remark),
                Column.<Choice>metres("Strip at the left", c -> c.is().firstStripMetres())
                        .wide(15),
                Column.<Choice>metres("Strip at the right", c -> c.is().lastStripMetres())
                        .wide(15),
                Column.count("Strips", c -> c.is().strips()),
                Column.count("Sheets", c -> c.is().sheets()),
                Column.<Choice>metres("Total length", c -> c.is().lengthMetres())
                        .wide(14),
                Column.squareMetres("Waste", c -> c.is().wasteSquareMetres()));
    }

    private record Choice(PlaneResult plane, SetOut is) {
        /** Least waste first; where waste is the same, the wider outer strips. */
        private static final Comparator<SetOut> BETTER =
                Comparator.comparingDouble(Choice::waste).thenComparingDouble(s -> -Math.rint(narrowest(s) * 1000));

        String remark() {
            // Sheets of another width are another order: each width has its own best way.
            List<SetOut> alike = plane.setOuts().stream()
                    .filter(other -> other.coverWidthMetres() == is.coverWidthMetres())
                    .toList();
            boolean best = alike.stream().allMatch(other -> BETTER.compare(is, other) <= 0);
            boolean tied = alike.stream().anyMatch(other -> !other.equals(is) && waste(other) == waste(is));
            String good = tied ? "widest outer strips" : "least waste";
            return (is.chosen() ? "as laid out" : "") + (is.chosen() && best ? ", " : "") + (best ? good : "");
        }

        private static double waste(SetOut choice) {
            return Math.rint(choice.wasteSquareMetres() * 1000);
        }

        private static double narrowest(SetOut choice) {
            return Math.min(choice.firstStripMetres(), choice.lastStripMetres());
        }
    }
}
