package runtrue.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import runtrue.result.BearingResult;
import runtrue.result.BillResult;
import runtrue.result.BodyResult;
import runtrue.result.CheckResult;
import runtrue.result.ConcessionResult;
import runtrue.result.Conforming;
import runtrue.result.Counts;
import runtrue.result.Direction;
import runtrue.result.EdgeResult;
import runtrue.result.ElementRef;
import runtrue.result.FileInfo;
import runtrue.result.Finding;
import runtrue.result.HealthLine;
import runtrue.result.Importance;
import runtrue.result.Measure;
import runtrue.result.Outcome;
import runtrue.result.PlaneResult;
import runtrue.result.PlaneResult.Range;
import runtrue.result.Point;
import runtrue.result.ReadMethod;
import runtrue.result.RoofSystemInfo;
import runtrue.result.RuleSetInfo;
import runtrue.result.Setting;
import runtrue.result.Severity;
import runtrue.result.StatedValue;
import runtrue.result.ToleranceInfo;
import runtrue.result.UnreadElement;

/**
 * An invented drop: a hall with two planes of 12.5 m by 8 m and a lean-to whose name tries to be a formula. Figures are made
 * up; they need not add up to a building.
 */
final class MillLane {
    static final String FORMULA = "=HYPERLINK(\"http://example.invalid\",\"Lean-to\")";

    private static final ElementRef SLAB = element("0Qm5X1aVr5cwTq8dYzN3aB", "Roof slab 01", "IfcSlab", 412);
    private static final ElementRef LEAN_TO = element("1Lm5X1aVr5cwTq8dYzN3aC", FORMULA, "IfcSlab", 655);
    static final ElementRef PURLIN = new ElementRef(
            "2Pm5X1aVr5cwTq8dYzN3aD",
            "Purlin Z200 axis 4",
            "IfcMember",
            "mill-lane-structure.ifc",
            98,
            "Level 1",
            "typed as a support in the model");

    private MillLane() {}

    static CheckResult result() {
        return new CheckResult(
                CheckResult.FORMAT,
                "0.1.0",
                "2026-03-02T08:00:00+01:00",
                "Mill Lane & Sons, drop 3",
                files(),
                ruleSet(),
                system(),
                settings(),
                tolerances(),
                counts(),
                planes(),
                edges(),
                List.of(new BodyResult(
                        "B-01", List.of("P-3f2a", "P-77b0"), 15.76, 12.5, 124.0, 125.386, List.of(), List.of())),
                List.of(),
                findings(),
                List.of(new Conforming(
                        "F-c001",
                        "least-pitch",
                        "pitch of the plane",
                        "P-3f2a",
                        "Hall / south plane",
                        Optional.of(new Measure(10, "deg")),
                        Optional.of(new Measure(2, "deg")),
                        Optional.of(new Measure(8, "deg")),
                        "at least")),
                List.of(
                        new ConcessionResult(
                                "F-7b1290",
                                "holds",
                                "R. Aldous, design lead",
                                "Agreed with the engineer, RFI 27",
                                "2027-03-31",
                                "2.2 m",
                                "Holds until 2027-03-31.",
                                "concessions.yaml:2"),
                        new ConcessionResult(
                                "F-0999",
                                "unknown",
                                "R. Aldous, design lead",
                                "RFI 12",
                                "",
                                "",
                                "No finding of this drop has the id F-0999.",
                                "concessions.yaml:7")),
                bill(),
                unread(),
                List.of(new UnreadElement(
                        "4Um5X1aVr5cwTq8dYzN3aF",
                        "Insulation 120",
                        "IfcCovering",
                        "mill-lane-architecture.ifc",
                        731,
                        "Roof",
                        "roof",
                        "Body/SweptSolid: IfcExtrudedAreaSolid",
                        "Lies under Roof slab 01: its area is counted there once.")),
                methods(),
                stated(),
                health(),
                List.of(
                        "1 element was not read: areas, runs and supports may be incomplete.",
                        "Wind: the zones and fixing densities here are a check of the model against the stated rule set."
                                + " They do not replace the design of a licensed engineer. Local codes and licensed"
                                + " practice come first.",
                        "Work at height: collective protection, access and rescue must be planned before anyone goes on"
                                + " the roof."),
                Optional.empty());
    }

    private static List<ReadMethod> methods() {
        return List.of(
                new ReadMethod(
                        SLAB,
                        "roof",
                        List.of("P-3f2a", "P-77b0"),
                        "derived",
                        "Body/SweptSolid: IfcExtrudedAreaSolid",
                        "built-in reader",
                        true,
                        List.of()),
                new ReadMethod(
                        LEAN_TO,
                        "roof",
                        List.of("P-a1c4"),
                        "assumed",
                        "Body/SurfaceModel: IfcShellBasedSurfaceModel",
                        "built-in reader",
                        false,
                        List.of("not closed: its upper side was assumed to be the roof")));
    }

    private static List<StatedValue> stated() {
        return List.of(
                new StatedValue(
                        SLAB,
                        "roof",
                        List.of("P-3f2a", "P-77b0"),
                        "pitch",
                        "Pset_SlabCommon.PitchAngle",
                        false,
                        true,
                        new Measure(10, "deg"),
                        Optional.of(new Measure(10, "deg")),
                        "pitch of its upper side",
                        Optional.of(new Measure(0, "deg")),
                        Optional.of(new Measure(0.5, "deg")),
                        "agrees",
                        ""),
                new StatedValue(
                        LEAN_TO,
                        "roof",
                        List.of("P-a1c4"),
                        "area",
                        "BaseQuantities.GrossArea",
                        true,
                        false,
                        new Measure(9.36, "m2"),
                        Optional.of(new Measure(100.72, "m2")),
                        "true area of the upper side, openings kept",
                        Optional.of(new Measure(91.36, "m2")),
                        Optional.of(new Measure(1.01, "m2")),
                        "contradicts",
                        "It is 0.0929 times the area: a value already in square metres was converted from square feet"
                                + " once more."));
    }

    private static List<HealthLine> health() {
        return List.of(
                new HealthLine(
                        "same-geometry",
                        Importance.HIGH,
                        "Same geometry twice",
                        "mill-lane-architecture.ifc",
                        "",
                        "One of them is built, two are modelled.",
                        "Delete one.",
                        Collections.nCopies(27, new HealthLine.Item(SLAB, "as IfcSlab \"Roof slab 02\" (#44)"))),
                new HealthLine(
                        "no-true-north",
                        Importance.LOW,
                        "No true north",
                        "mill-lane-architecture.ifc",
                        "",
                        "Directions of fall can be given from the model's own axis alone.",
                        "State true north.",
                        List.of()));
    }

    private static List<FileInfo> files() {
        return List.of(
                new FileInfo(
                        "mill-lane-architecture.ifc",
                        48_123_456,
                        "0123456789abcdef".repeat(4),
                        "IFC4",
                        "Invented Modeller 12 (build 4711)",
                        "1MillLaneArchitecture0",
                        0.001,
                        "2026-02-27T16:20:11",
                        812_345,
                        3,
                        0,
                        1,
                        List.of("States no true north: directions are given from the model's +Y only.")),
                new FileInfo(
                        "mill-lane-structure.ifc",
                        9_876_543,
                        "fedcba9876543210".repeat(4),
                        "IFC2X3",
                        "",
                        "1MillLaneStructure0000",
                        0.3048,
                        "2026-02-26T09:05:00",
                        151_020,
                        0,
                        24,
                        0,
                        List.of()));
    }

    private static RuleSetInfo ruleSet() {
        return new RuleSetInfo(
                "Demo rules for concealed-fixed sheeting",
                "1.2",
                "rules/demo.yml",
                "00ff".repeat(16),
                List.of(
                        new RuleSetInfo.Rule("least-pitch", "Pitch is enough to drain", Severity.CRITICAL),
                        new RuleSetInfo.Rule("end-span", "End span is within the sheet's reach", Severity.MAJOR),
                        new RuleSetInfo.Rule("fixing-density", "Edge zones are fixed densely enough", Severity.MAJOR),
                        new RuleSetInfo.Rule("unlapped-length", "Sheets run in one length", Severity.MAJOR)));
    }

    private static RoofSystemInfo system() {
        return new RoofSystemInfo(
                "demo-pan-500",
                "Demo wide pan 500",
                "invented for the demo",
                "rules/systems/demo-pan-500.yml",
                List.of(
                        new RoofSystemInfo.Value("cover_width", new Measure(500, "mm")),
                        new RoofSystemInfo.Value("mass", new Measure(6.2, "kg/m2")),
                        new RoofSystemInfo.Value("thermal_expansion", new Measure(0.000012, "1/K"))),
                List.of(new RoofSystemInfo.Text("material", "coated steel")));
    }

    private static List<Setting> settings() {
        return List.of(
                new Setting("roof system", "demo-pan-500", Setting.Origin.DEFAULT, ""),
                new Setting("design uplift in the corner zone", "1.8 kPa", Setting.Origin.FILE, "runtrue.yml"),
                new Setting("threads", "2", Setting.Origin.COMMAND_LINE, ""));
    }

    private static List<ToleranceInfo> tolerances() {
        return List.of(
                new ToleranceInfo(
                        "same point",
                        new Measure(0.01, "mm"),
                        "Authoring programs write millimetres with up to three decimals."),
                new ToleranceInfo(
                        "parallel planes",
                        new Measure(0.2, "deg"),
                        "About a tenth of the least pitch that is sheeted."));
    }

    private static Counts counts() {
        return new Counts(
                new Counts.Outcomes(1, 2, 1, 1),
                List.of(
                        new Counts.RuleOutcomes("least-pitch", new Counts.Outcomes(1, 1, 0, 0)),
                        new Counts.RuleOutcomes("end-span", new Counts.Outcomes(0, 1, 0, 1)),
                        new Counts.RuleOutcomes("fixing-density", new Counts.Outcomes(0, 0, 1, 0)),
                        new Counts.RuleOutcomes("unlapped-length", new Counts.Outcomes(0, 0, 0, 0))));
    }

    private static List<PlaneResult> planes() {
        return List.of(
                plane("P-3f2a", "Hall / south plane", 10, 180, SLAB, sheets(25, 8.0, 0.5)),
                plane("P-77b0", "Hall / north plane", 10, 0, SLAB, sheets(25, 8.0, 0.3)),
                plane("P-a1c4", FORMULA, 1.5, 90, LEAN_TO, List.of()));
    }

    private static PlaneResult plane(
            String id, String name, double pitch, double azimuth, ElementRef element, List<PlaneResult.Sheet> sheets) {
        boolean supported = !sheets.isEmpty();
        return new PlaneResult(
                id,
                name,
                "Hall",
                "Level 1",
                pitch,
                OptionalDouble.of(azimuth),
                OptionalDouble.empty(),
                100,
                100.72,
                98.481,
                99.19,
                124.0,
                125.386,
                supported ? 8 : 0,
                OptionalDouble.of(0.2),
                "between A and C, 1 and 4",
                new PlaneResult.Frame(
                        new Point(430_000, 5_300_000, 124),
                        new Direction(1, 0, 0),
                        new Direction(0, 0.984808, 0.173648),
                        new Direction(0, -0.173648, 0.984808)),
                List.of(),
                List.of(new PlaneResult.Penetration("H-1", 0.6, 1.2, 0.72, List.of())),
                List.of(element),
                sheets,
                List.of(
                        new PlaneResult.SetOut("left", 0.5, 25, 0.5, 0.2, 25, 200, 6.2, true),
                        new PlaneResult.SetOut("right", 0.5, 25, 0.2, 0.5, 25, 200, 6.2, false),
                        new PlaneResult.SetOut("centred", 0.5, 25, 0.35, 0.35, 25, 200, 6.2, false)),
                supported ? supports(id) : List.of(),
                supported ? spans(id) : List.of(),
                BearingResult.unknown(),
                supported ? List.of() : List.of("No support was found within 0.45 m below the skin."),
                Optional.empty());
    }

    private static List<PlaneResult.Sheet> sheets(int count, double length, double lastWidth) {
        List<PlaneResult.Sheet> sheets = new ArrayList<>();
        IntStream.rangeClosed(1, count).forEach(n -> {
            double width = n == count ? lastWidth : 0.5;
            double from = (n - 1) * 0.5;
            double own = n == 7 ? length - 1.2 : length;
            sheets.add(new PlaneResult.Sheet(
                    n,
                    new Range(from, from + width),
                    new Range(0, own),
                    own,
                    own,
                    width * own,
                    width < 0.5,
                    false,
                    n == 7));
        });
        return sheets;
    }

    private static List<PlaneResult.SupportLine> supports(String plane) {
        return IntStream.rangeClosed(1, 5)
                .mapToObj(n -> new PlaneResult.SupportLine(
                        plane + "/L" + n,
                        n,
                        0.2 + (n - 1) * 1.9,
                        List.of(new PlaneResult.Piece(
                                PURLIN,
                                new Point(430_000, 5_300_000.2 + n, 124),
                                new Point(430_012.5, 5_300_000.2 + n, 124),
                                -0.15,
                                OptionalDouble.of(0),
                                OptionalDouble.of(-0.004),
                                "between A and C, 1 and 2",
                                0.065,
                                0.2,
                                OptionalDouble.of(0.002))),
                        List.of(new Range(0, 12.5))))
                .toList();
    }

    private static List<PlaneResult.Span> spans(String plane) {
        Range width = new Range(0, 12.5);
        return List.of(
                new PlaneResult.Span("eave overhang", 0.2, 0.2, width, new Range(0, 0.2), "", plane + "/L1"),
                new PlaneResult.Span("end span", 1.9, 1.9, width, new Range(0.2, 2.1), plane + "/L1", plane + "/L2"),
                new PlaneResult.Span(
                        "internal span", 1.9, 1.88, width, new Range(2.1, 4), plane + "/L2", plane + "/L3"));
    }

    private static List<EdgeResult> edges() {
        Point a = new Point(430_000, 5_300_000, 124);
        Point b = new Point(430_012.5, 5_300_000, 124);
        return List.of(
                new EdgeResult(
                        "E-01", "eave", List.of("P-3f2a"), a, b, 12.5, OptionalDouble.empty(), OptionalDouble.empty()),
                new EdgeResult(
                        "E-02",
                        "ridge",
                        List.of("P-3f2a", "P-77b0"),
                        a,
                        b,
                        12.5,
                        OptionalDouble.of(20),
                        OptionalDouble.empty()));
    }

    private static List<Finding> findings() {
        return List.of(
                finding(
                        "F-19ab03",
                        0,
                        Outcome.DOES_NOT_CONFORM,
                        "P-a1c4",
                        "pitch of the plane",
                        LEAN_TO,
                        new Measure(1.5, "deg"),
                        new Measure(2, "deg"),
                        new Measure(-0.5, "deg"),
                        "The pitch is 1.5°, at least 2° is needed: 0.5° too flat.",
                        "Raise the head by 39 mm over 4.5 m, or choose a system for lower pitch."),
                finding(
                        "F-22c9d1",
                        1,
                        Outcome.DOES_NOT_CONFORM,
                        "P-3f2a",
                        "end span between lines 1 and 2",
                        PURLIN,
                        new Measure(1900, "mm"),
                        new Measure(1800, "mm"),
                        new Measure(-100, "mm"),
                        "The end span is 1900 mm, at most 1800 mm is allowed: 100 mm too long.",
                        "Move line 2 down by 100 mm, or add a support."),
                finding("F-5e0077", 2, Outcome.NOT_ASSESSED, "P-3f2a", "corner zone", SLAB, null, null, null, "", ""),
                finding(
                        "F-7b1290",
                        1,
                        Outcome.CONCEDED,
                        "P-77b0",
                        "end span between lines 1 and 2",
                        PURLIN,
                        new Measure(1900, "mm"),
                        new Measure(1800, "mm"),
                        new Measure(-100, "mm"),
                        "The end span is 1900 mm, at most 1800 mm is allowed: 100 mm too long.",
                        ""));
    }

    private static Finding finding(
            String id,
            int rule,
            Outcome outcome,
            String plane,
            String subject,
            ElementRef element,
            @Nullable Measure measured,
            @Nullable Measure limit,
            @Nullable Measure margin,
            String message,
            String cure) {
        RuleSetInfo.Rule of = ruleSet().rules().get(rule);
        return new Finding(
                id,
                of.id(),
                of.title(),
                of.severity(),
                outcome,
                subject,
                plane,
                plane.equals("P-a1c4") ? FORMULA : "Hall / plane " + plane,
                "Level 1",
                List.of(element.file()),
                List.of(element),
                "between A and B, 3 and 4",
                Optional.of(new Point(430_006.25, 5_300_001.034, 124.18)),
                Optional.ofNullable(measured),
                Optional.ofNullable(limit),
                Optional.ofNullable(margin),
                rule == 0 ? "at least" : "at most",
                "Roof system demo-pan-500 (invented for the demo)",
                message,
                cure,
                switch (outcome) {
                    case NOT_ASSESSED ->
                        "The settings state no design uplift for the edge zone. State it and run again.";
                    case CONCEDED -> "A. Miller, 2026-02-28: load test of the sheet at 1.9 m is on file.";
                    default -> "";
                },
                List.of("end_span = 1900 mm (derived from lines 1 and 2)", "cover_width = 500 mm (roof system)"));
    }

    private static BillResult bill() {
        return new BillResult(
                new BillResult.BuildUp(
                        "single-skin", "Single skin", "Invented for the demo.", "rules/build-ups/ours.yaml"),
                List.of(sheets(), clips(), ridge(), gutter()),
                List.of(
                        new BillResult.Figure("Longest roof sheet", OptionalDouble.of(8), "m", "", "as ordered"),
                        new BillResult.Figure(
                                "Longest roof sheet against transport",
                                OptionalDouble.of(13.5),
                                "m",
                                "fits",
                                "8.000 m is ordered; longest that can be brought to this site"),
                        new BillResult.Figure(
                                "Mass of a pack to lift",
                                OptionalDouble.empty(),
                                "kg",
                                "",
                                "not known: add sheets_per_pack to runtrue.yaml")),
                List.of("Clips of the lean-to: no support was found."),
                Optional.empty(),
                List.of(
                        new BillResult.Modelled(
                                "P-3f2a",
                                "Clip",
                                "IfcDiscreteAccessory",
                                120,
                                3,
                                "by its mapped items",
                                List.of("clip"),
                                OptionalDouble.of(130),
                                "",
                                List.of("3Clip", "3Clop", "3Clap")),
                        new BillResult.Modelled(
                                "",
                                "BOLT",
                                "IfcMechanicalFastener",
                                8,
                                8,
                                "one each",
                                List.of(),
                                OptionalDouble.empty(),
                                "lies on no roof plane, or its place is not known",
                                List.of("3Bolt"))),
                List.of(new BillResult.MayServe(
                        "P-3f2a", 3, "P-3f2a", 21, 13.25, 0.55, "one above the other, by one slanting cut")));
    }

    private static BillResult.Line sheets() {
        return line("roof-sheet", "Roof sheet 500", "full width", "m2", List.of(195.2, 196.0, 196.0))
                .counted(49, "sheet", 8)
                .because("openings", 0.8)
                .from("P-3f2a", 97.6, 25, "P-3f2a")
                .from("P-77b0", 97.6, 24, "P-77b0")
                .line();
    }

    private static BillResult.Line clips() {
        return line("clip", "Clip", "edge zone", "pcs", List.of(130.0, 131.3, 250.0))
                .counted(1, "box of 250 pcs", 0)
                .because("bent or lost, 1 %", 1.3)
                .because("last box is not used up", 118.7)
                .from("P-3f2a", 130, 0, "P-3f2a/L1", "P-3f2a/L2", "P-3f2a/L3")
                .line();
    }

    private static BillResult.Line ridge() {
        return line("ridge-cap", "Ridge cap", "", "m", List.of(12.5, 12.9, 15.0))
                .counted(5, "stock length of 3 m", 3)
                .because("laps of 100 mm", 0.4)
                .because("left of stock lengths; no plan cuts fewer, by total length", 2.1)
                .pieces(3, 4)
                .pieces(0.9, 1)
                .cut(new BillResult.StockPlan(
                        3,
                        0,
                        5,
                        5,
                        "total length",
                        true,
                        false,
                        2.1,
                        List.of(
                                new BillResult.Pattern(4, List.of(ridgePieces(3, 4)), 0),
                                new BillResult.Pattern(1, List.of(ridgePieces(0.9, 1)), 2.1))))
                .from("P-3f2a", 12.5, 5, "E-02")
                .line();
    }

    private static BillResult.Cut ridgePieces(double length, long count) {
        return new BillResult.Cut(length, 1, List.of(new BillResult.Use("E-02", "ridge E-02", count)));
    }

    private static BillResult.Line gutter() {
        return line("gutter", "Gutter, length only", "", "m", List.of(12.5, 12.5, 12.5))
                .from("P-3f2a", 12.5, 0, "E-01")
                .line();
    }

    private static BillLines line(String item, String description, String variant, String unit, List<Double> amounts) {
        return new BillLines(item, description, variant, unit, amounts);
    }

    private static List<UnreadElement> unread() {
        return List.of(new UnreadElement(
                "3Um5X1aVr5cwTq8dYzN3aE",
                "Rooflight dome",
                "IfcRoof",
                "mill-lane-architecture.ifc",
                702,
                "Roof",
                "roof",
                "Body/AdvancedBrep: IfcAdvancedBrep",
                "Curved faces are not read. Export the element as facets."));
    }

    private static ElementRef element(String globalId, String name, String ifcClass, int id) {
        return new ElementRef(
                globalId, name, ifcClass, "mill-lane-architecture.ifc", id, "Level 1", "predefined type ROOF");
    }
}
