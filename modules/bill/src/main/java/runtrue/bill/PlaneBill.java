package runtrue.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.Sheet;
import runtrue.roof.SupportLine;
import runtrue.rules.DropSettings;
import runtrue.rules.OrderLengths;
import runtrue.rules.RoofSystem;

/** Quantities of one plane. */
final class PlaneBill {
    private final PlaneLayout layout;
    private final RoofPlane plane;
    private final RoofSettings laidOut;
    private final RoofSystem system;
    private final DropSettings settings;
    private final OrderLengths lengths;
    private final List<String> missing;
    private final List<BillLine> lines = new ArrayList<>();

    /**
     * Prepares.
     *
     * @param missing takes what cannot be worked out, with the reason
     */
    PlaneBill(PlaneLayout layout, Roof roof, RoofSystem system, DropSettings settings, List<String> missing) {
        this.layout = layout;
        this.plane = layout.plane();
        this.laidOut = roof.settings();
        this.lengths = new OrderLengths(layout, roof.edges(), system);
        this.system = system;
        this.settings = settings;
        this.missing = missing;
    }

    List<BillLine> lines() {
        areas();
        if (layout.sheets().isEmpty()) {
            miss("sheets", "none were laid out" + remarks());
        } else {
            sheets();
        }
        clips();
        return lines;
    }

    private void areas() {
        add("net area", "roof area, openings taken off", plane.area(), "m2", "true area of the outline less its holes");
        add("gross area", "roof area, openings not taken off", plane.grossArea(), "m2", "true area of the outline");
        add("insulation", "insulation area", plane.area(), "m2", "net roof area; overlaps and waste not added");
    }

    /** Sheets of equal length to the millimetre make one line; trimmed ones apart, as they cost a cut along the run. */
    private void sheets() {
        record Kind(boolean trimmed, long widthMm, long lengthMm) {}
        Map<String, Kind> kinds = new TreeMap<>();
        Map<String, Integer> counts = new TreeMap<>();
        double length = 0;
        for (Sheet sheet : layout.sheets()) {
            long width = sheet.trimmed() ? millimetres(sheet.u().length()) : 0;
            Kind kind = new Kind(sheet.trimmed(), width, millimetres(lengths.of(sheet)));
            String key =
                    String.format(Locale.ROOT, "%b %09d %06d", kind.trimmed(), 999_999_999 - kind.lengthMm(), width);
            kinds.put(key, kind);
            counts.merge(key, 1, Integer::sum);
            length += kind.lengthMm() / 1000.0;
        }
        kinds.forEach((key, kind) -> lines.add(new BillLine(
                item(kind.trimmed()),
                kind.trimmed() ? "sheet trimmed to " + kind.widthMm() + " mm" : "sheet of full cover width",
                plane.id(),
                counts.getOrDefault(key, 0),
                "pcs",
                kind.lengthMm() / 1000.0,
                lengths.method(),
                List.of(plane.id()))));
        double cover = laidOut.coverWidth();
        add("sheet length", "sheets, total length", length, "m", "sum of the sheets' lengths");
        add("cover area", "sheets, cover area", length * cover, "m2", "cover width x length, trimmed sheets in full");
        add(
                "waste",
                "sheets, cover area that covers no roof",
                length * cover - plane.area(),
                "m2",
                "cover area less net area: trimmed strips, ends cut askew, openings, what reaches past the plane");
        mass(length);
    }

    /** Sheets curved along the fall are another thing to make, carry and price. */
    private String item(boolean trimmed) {
        String item = trimmed ? "trimmed sheet" : "sheet";
        return plane.curve().isPresent() ? "curved " + item : item;
    }

    private void mass(double length) {
        Optional<Double> thickness = stated("thickness", "sheet mass");
        Optional<Double> density = stated("density", "sheet mass");
        Optional<Double> girth = stated("girth", "sheet mass");
        if (thickness.isPresent() && density.isPresent() && girth.isPresent()) {
            add(
                    "sheet mass",
                    "sheets, mass of the base metal",
                    thickness.get() * density.get() * girth.get() * length,
                    "kg",
                    "thickness x density x girth x length; coatings not added");
        }
    }

    private void clips() {
        if (layout.supports().isEmpty()) {
            miss("clips and primary fixings", "no support lines were found" + remarks());
            return;
        }
        Optional<Double> spacing = stated("clip_spacing", "clips and primary fixings");
        if (spacing.isEmpty()) {
            return;
        }
        List<Double> ribs = RibLines.of(
                plane.outline().getEnvelopeInternal(), laidOut.coverWidth(), spacing.get(), settings.setOut());
        Crossings crossings = Crossings.count(plane.outline(), ribs, layout.supports());
        List<String> from = layout.supports().stream().map(SupportLine::id).toList();
        String method = String.format(
                Locale.ROOT,
                "one per support under each rib: %d at the first edge, %d between, %d at the last edge",
                crossings.firstVerge(),
                crossings.interior(),
                crossings.lastVerge());
        lines.add(new BillLine("clip", "clips", plane.id(), crossings.total(), "pcs", 0, method, from));
        stated("screws_per_clip", "primary fixings")
                .ifPresent(screws -> lines.add(new BillLine(
                        "primary fixing",
                        "screws of the clips",
                        plane.id(),
                        crossings.total() * screws,
                        "pcs",
                        0,
                        "clips x screws per clip",
                        from)));
    }

    private Optional<Double> stated(String value, String neededFor) {
        Optional<Double> si = system.si(value);
        if (si.isEmpty()) {
            miss(neededFor, "roof system " + system.name() + " states no " + value);
        }
        return si;
    }

    private void add(String item, String description, double quantity, String unit, String method) {
        lines.add(new BillLine(item, description, plane.id(), quantity, unit, 0, method, List.of(plane.id())));
    }

    private void miss(String what, String reason) {
        missing.add(what + " of plane " + plane.name() + ": " + reason);
    }

    private String remarks() {
        return layout.remarks().isEmpty() ? "" : " (" + String.join("; ", layout.remarks()) + ")";
    }

    private static long millimetres(double metres) {
        return Math.round(metres * 1000);
    }
}
