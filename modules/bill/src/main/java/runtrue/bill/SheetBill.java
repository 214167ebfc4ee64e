package runtrue.bill;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import runtrue.bill.BillLine.Difference;
import runtrue.bill.count.PlaneSubjects;
import runtrue.bill.count.RoofSubjects;
import runtrue.bill.count.Subject;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.Sheet;
import runtrue.roof.sheet.SheetLayout;
import runtrue.rules.DropSettings;
import runtrue.rules.buildup.BuildUpItem;
import runtrue.rules.buildup.BuildUpItem.Packing;

/** Lines of sheets: one for each length, with trimmed, tapered and curved ones apart. */
final class SheetBill {
    private final BuildUpItem item;
    private final RoofSubjects subjects;
    private final Amounts amounts;
    private final double coverWidth;
    private final DropSettings settings;
    private final String name;
    private final Map<Kind, Group> groups = new TreeMap<>(Kind.ORDER);

    /** Sheets that are alike; lengths in millimetres, {@code width} 0 for the full cover width, {@code stock} where cut from it. */
    private record Kind(boolean stock, boolean curved, boolean tapered, long width, long length) {
        static final Comparator<Kind> ORDER = Comparator.comparing(Kind::curved)
                .thenComparing(k -> !k.stock())
                .thenComparing(k -> k.width() > 0)
                .thenComparing(Kind::tapered)
                .thenComparing(Comparator.comparingLong(Kind::length).reversed())
                .thenComparingLong(Kind::width);
    }

    private static final class Group {
        private final Taken taken = new Taken();
        private final Map<String, Double> differences = new LinkedHashMap<>();
        private final Optional<CutList> stock;
        private long count;
        private double laps;
        private boolean lapped;
        private boolean besideSupports;

        Group(Optional<CutList> stock) {
            this.stock = stock;
        }
    }

    /** @param name for people, with profile, thickness and colour */
    SheetBill(BuildUpItem item, RoofSubjects subjects, Amounts amounts, Roof roof, DropSettings settings, String name) {
        this.item = item;
        this.subjects = subjects;
        this.amounts = amounts;
        this.settings = settings;
        this.name = name;
        coverWidth = item.coverWidth().orElse(roof.settings().coverWidth());
    }

    List<BillLine> lines() {
        for (PlaneSubjects plane : subjects.planes()) {
            List<Sheet> sheets = sheets(plane.layout());
            List<Subject> own = item.coverWidth().isPresent()
                    ? sheets.stream().map(plane::otherSheet).toList()
                    : plane.of(item.on());
            for (int i = 0; i < sheets.size(); i++) {
                Subject subject = own.get(i);
                Sheet sheet = sheets.get(i);
                if (amounts.applies(item, subject)) {
                    amounts.quantity(item, subject).ifPresent(run -> add(subject, plane, sheet, run));
                }
            }
        }
        List<BillLine> lines = new ArrayList<>();
        groups.forEach((kind, group) -> lines.add(line(kind, group)));
        return lines;
    }

    private List<Sheet> sheets(PlaneLayout layout) {
        return item.coverWidth().isPresent()
                ? SheetLayout.of(layout.plane().outline(), coverWidth, settings.setOut())
                : layout.sheets();
    }

    private void add(Subject subject, PlaneSubjects plane, Sheet sheet, double run) {
        SheetPieces pieces = item.longest()
                .map(most -> SheetPieces.of(run, supports(plane, sheet, run), item.lap(), most))
                .orElse(new SheetPieces(List.of(new SheetPieces.Piece(run, 1)), true));
        boolean curved = plane.layout().plane().curve().isPresent();
        double left = sheet.area();
        for (int i = 0; i < pieces.pieces().size(); i++) {
            SheetPieces.Piece piece = pieces.pieces().get(i);
            double area = i == pieces.pieces().size() - 1 ? left : sheet.area() * piece.share();
            left -= area;
            Group group = add(subject, sheet, piece, curved, area);
            group.laps += coverWidth * (piece.length() - piece.share() * run);
            group.lapped |= pieces.pieces().size() > 1;
            group.besideSupports |= !pieces.onSupports();
        }
    }

    /** From the low end of a run, which begins before the plane's own low edge where it reaches into the gutter. */
    private static List<Double> supports(PlaneSubjects plane, Sheet sheet, double run) {
        double before = Math.max(0, run - sheet.blank());
        return plane.supportsUnder(sheet).stream()
                .map(v -> v - sheet.v().from() + before)
                .toList();
    }

    private Group add(Subject subject, Sheet sheet, SheetPieces.Piece piece, boolean curved, double area) {
        double step = item.step().orElse(0.001);
        long length = Math.round(Math.ceil(piece.length() / step - 1e-6) * step * 1000);
        long width = sheet.trimmed() ? Math.round(sheet.u().length() * 1000) : 0;
        Group group = group(new Kind(false, curved, sheet.tapered(), width, length));
        group.taken.add(subject, area, 1);
        group.count++;
        group.stock.ifPresent(list -> list.add(length, 1, subject));
        double blank = sheet.u().length() * sheet.blank();
        difference(group, cutReason(sheet), piece.share() * (blank - sheet.area()));
        difference(
                group,
                "strips trimmed in width",
                piece.share() * (coverWidth - sheet.u().length()) * sheet.blank());
        return group;
    }

    /** Flat sheets are cut from stock lengths where there are any; what is longer than these is ordered by its own length. */
    private Group group(Kind own) {
        Optional<Packing> stock =
                item.packing().filter(p -> !own.curved() && own.length() <= Thousandths.of(p.length()));
        Kind kind = stock.map(p -> new Kind(true, false, false, 0, Thousandths.of(p.length())))
                .orElse(own);
        return groups.computeIfAbsent(kind, k -> new Group(stock.map(CutList::new)));
    }

    private static String cutReason(Sheet sheet) {
        if (sheet.tapered() && sheet.cut()) {
            return "ends cut askew and openings";
        }
        return sheet.cut() ? "openings" : "ends cut askew";
    }

    private static void difference(Group group, String reason, double area) {
        if (Thousandths.of(area) != 0) {
            group.differences.merge(reason, area, Double::sum);
        }
    }

    private BillLine line(Kind kind, Group group) {
        double length = kind.length() / 1000.0;
        Optional<StockPlan> plan = group.stock.map(CutList::plan);
        long count = plan.map(StockPlan::count).orElse(group.count);
        long ordered = Thousandths.of(count * length * coverWidth);
        List<Difference> differences = new ArrayList<>();
        long rest = differences(group, plan, ordered, differences);
        Optional<Double> mass = amounts.mass(item, subjects.drop());
        return new BillLine(
                id(kind),
                item.id(),
                item.section(),
                (kind.curved() ? "Curved: " : "") + name,
                variant(kind),
                item.unit().symbol(),
                Thousandths.quantity(group.taken.net()),
                Thousandths.quantity(ordered - Math.max(0, rest)),
                Thousandths.quantity(ordered),
                differences,
                count,
                "sheet",
                length,
                mass.isPresent()
                        ? OptionalDouble.of(
                                Thousandths.quantity(Thousandths.of(mass.get() * Thousandths.quantity(ordered))))
                        : OptionalDouble.empty(),
                group.stock.map(CutList::pieces).orElse(List.of()),
                plan,
                "strips of one cover width, set out from the " + verge() + "; each the square-cut strip it is cut from"
                        + (kind.stock() ? ", in one piece from a stock length" : "") + laps(group),
                item.about(),
                item.source(),
                group.taken.parts());
    }

    private static String laps(Group group) {
        if (!group.lapped) {
            return "";
        }
        return group.besideSupports
                ? "; end laps beside supports in part: these do not allow others"
                : "; end laps over supports, from the eave up";
    }

    /** Gathers reasons, and gives the thousandths that are none of the geometry's. */
    private long differences(Group group, Optional<StockPlan> plan, long ordered, List<Difference> differences) {
        if (Thousandths.of(group.laps) != 0) {
            group.differences.put("laps of " + Order.millimetres(item.lap()), group.laps);
        }
        double left = plan.map(p -> p.count() * p.stock()).orElse(0.0)
                - group.stock.map(CutList::length).orElse(0.0);
        plan.ifPresent(p -> difference(group, "left of stock lengths; " + Order.proof(p), left * coverWidth));
        long rest = ordered - group.taken.net();
        for (Map.Entry<String, Double> entry : group.differences.entrySet()) {
            long part = Thousandths.of(entry.getValue());
            differences.add(new Difference(entry.getKey(), Thousandths.quantity(part)));
            rest -= part;
        }
        if (rest != 0) {
            differences.add(new Difference(restReason(), Thousandths.quantity(rest)));
        }
        return rest;
    }

    /** What is left: sheets reach past the modelled edges or stop short of them, and are cut in steps. */
    private String restReason() {
        return item.coverWidth().isPresent()
                ? "lengths rounded up"
                : "into the gutter, short of the ridge, lengths rounded";
    }

    private String id(Kind kind) {
        return String.format(
                Locale.ROOT,
                "%s/%s%.3f%s%s%s",
                item.id(),
                kind.stock() ? "stock-" : "",
                kind.length() / 1000.0,
                kind.width() > 0 ? "/trimmed-" + kind.width() : "",
                kind.tapered() ? "/tapered" : "",
                kind.curved() ? "/curved" : "");
    }

    private static String variant(Kind kind) {
        if (kind.stock()) {
            return "stock length, cut on site";
        }
        String width = kind.width() > 0 ? "trimmed to " + kind.width() + " mm" : "full width";
        return kind.tapered() ? width + ", tapered" : width;
    }

    private String verge() {
        return switch (settings.setOut()) {
            case LEFT -> "left verge, looking up the fall";
            case RIGHT -> "right verge, looking up the fall";
            case CENTRED -> "middle";
        };
    }
}
