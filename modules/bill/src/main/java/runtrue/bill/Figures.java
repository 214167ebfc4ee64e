package runtrue.bill;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import runtrue.roof.Roof;
import runtrue.rules.DropSettings;
import runtrue.rules.RoofSystem;
import runtrue.rules.SettingsFiles;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.buildup.BuildUpItem;
import runtrue.rules.buildup.ItemKind;

/** Areas, coil, lifting and transport of an order. */
final class Figures {
    private final RoofSystem system;
    private final DropSettings settings;
    private final List<BillLine> sheets;
    private final double cover;
    private final List<BillFigure> figures = new ArrayList<>();

    private Figures(Roof roof, List<BillLine> lines, BuildUp buildUp, RoofSystem system, DropSettings settings) {
        this.system = system;
        this.settings = settings;
        cover = roof.settings().coverWidth();
        List<String> own = buildUp.items().stream()
                .filter(i -> i.kind() == ItemKind.SHEET && i.coverWidth().isEmpty())
                .map(BuildUpItem::id)
                .toList();
        sheets = lines.stream().filter(l -> own.contains(l.item())).toList();
    }

    static List<BillFigure> of(
            Roof roof, List<BillLine> lines, BuildUp buildUp, RoofSystem system, DropSettings settings) {
        Figures figures = new Figures(roof, lines, buildUp, system, settings);
        figures.areas(roof);
        if (!figures.sheets.isEmpty()) {
            figures.sheets();
            figures.coil();
            figures.lifting();
            figures.transport();
        }
        return figures.figures;
    }

    private void areas(Roof roof) {
        double net = roof.planes().stream().mapToDouble(p -> p.plane().area()).sum();
        double gross =
                roof.planes().stream().mapToDouble(p -> p.plane().grossArea()).sum();
        add("Roof area, openings taken off", net, "m2", "true area of the planes");
        add("Roof area, openings not taken off", gross, "m2", "true area of the planes' outlines");
    }

    private void sheets() {
        double length = length();
        double net = sheets.stream().mapToDouble(BillLine::net).sum();
        add("Roof sheets, total length", length, "m", "sum of the order lengths");
        add("Roof sheets, cover area", length * cover, "m2", "cover width x total length, trimmed sheets in full");
        add("Roof sheets, cover area that covers no roof", length * cover - net, "m2", "reasons on sheet Waste");
        masses(
                "Roof sheets, mass",
                sheets.stream().mapToDouble(l -> l.count() * l.length()).sum(),
                "");
    }

    private double length() {
        return sheets.stream().mapToDouble(l -> l.count() * l.length()).sum();
    }

    /** Kilograms of a metre of sheet; coatings not added. */
    private Optional<Double> massPerMetre() {
        Optional<Double> girth = system.si("girth");
        Optional<Double> thickness = system.si("thickness");
        Optional<Double> density = system.si("density");
        return girth.isPresent() && thickness.isPresent() && density.isPresent()
                ? Optional.of(girth.get() * thickness.get() * density.get())
                : Optional.empty();
    }

    private void masses(String what, double metres, String how) {
        Optional<Double> mass = massPerMetre();
        if (mass.isPresent()) {
            add(what, mass.get() * metres, "kg", "thickness x density x girth x length; coatings not added" + how);
        } else {
            none(what, "kg", "not known: the roof system does not state all of thickness, density and girth");
        }
    }

    private void coil() {
        system.si("girth")
                .ifPresentOrElse(
                        girth -> add("Coil for rolling on site, width", girth * 1000, "mm", "girth of the profile"),
                        () -> none("Coil for rolling on site, width", "mm", "the roof system states no girth"));
        system.si("thickness")
                .ifPresentOrElse(
                        t -> add("Coil for rolling on site, thickness", t * 1000, "mm", "base metal"),
                        () -> none("Coil for rolling on site, thickness", "mm", "the roof system states no thickness"));
        add("Coil for rolling on site, length", length(), "m", "all roof sheets; starts and ends of coils not added");
    }

    private void lifting() {
        double longest = longest();
        add("Longest roof sheet", longest, "m", "as ordered");
        masses("Mass of the longest roof sheet", longest, "");
        Optional<Double> pack = settings.si("sheets_per_pack");
        if (pack.isPresent()) {
            masses(
                    "Mass of a pack to lift",
                    longest * pack.get(),
                    String.format(Locale.ROOT, "; %.0f sheets of the longest, packing not added", pack.get()));
        } else {
            none("Mass of a pack to lift", "kg", "not known: add sheets_per_pack to " + SettingsFiles.NAME);
        }
    }

    private double longest() {
        return sheets.stream().mapToDouble(BillLine::length).max().orElse(0);
    }

    private void transport() {
        limit("Longest roof sheet against transport", "transport_length", "brought to this site");
        limit("Longest roof sheet against rolling on site", "rolling_limit", "rolled and lifted on this site");
    }

    /** The longest sheet against what the settings allow. */
    private void limit(String what, String setting, String words) {
        Optional<Double> most = settings.si(setting);
        if (most.isEmpty()) {
            String remark = "what can be " + words + " is not stated; add " + setting + " to " + SettingsFiles.NAME;
            figures.add(new BillFigure(what, OptionalDouble.empty(), "m", "not assessed", remark));
            return;
        }
        boolean fits = longest() <= most.get() + 1e-6;
        figures.add(new BillFigure(
                what,
                OptionalDouble.of(rounded(most.get())),
                "m",
                fits ? "fits" : "does not fit",
                String.format(Locale.ROOT, "%.3f m is ordered; longest that can be %s", longest(), words)));
    }

    private void add(String what, double value, String unit, String remark) {
        figures.add(new BillFigure(what, OptionalDouble.of(rounded(value)), unit, "", remark));
    }

    private void none(String what, String unit, String remark) {
        figures.add(new BillFigure(what, OptionalDouble.empty(), unit, "", remark));
    }

    private static double rounded(double value) {
        return Thousandths.quantity(Thousandths.of(value));
    }
}
