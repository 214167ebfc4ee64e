package runtrue.result;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import runtrue.bill.Bill;
import runtrue.bill.BillFigure;
import runtrue.bill.BillLine;
import runtrue.bill.StockPlan;
import runtrue.bill.modelled.ModelledCount;
import runtrue.bill.offcut.MayServe;
import runtrue.ifc.Element;
import runtrue.ifc.GridAxis;
import runtrue.ifc.stated.AreaMeaning;
import runtrue.ifc.stated.StatedKind;
import runtrue.ifc.stated.StatedQuantity;
import runtrue.result.build.BillInput;
import runtrue.result.build.CheckInput;
import runtrue.result.build.RateList;
import runtrue.result.build.Trust;
import runtrue.roof.EdgeKind;
import runtrue.roof.Interval;
import runtrue.roof.PlaneFrame;
import runtrue.roof.PlaneLayout;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof;
import runtrue.roof.RoofBody;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.SetOut;
import runtrue.roof.Sheet;
import runtrue.roof.Span;
import runtrue.roof.SpanKind;
import runtrue.roof.SupportEvidence;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;
import runtrue.roof.Zone;
import runtrue.roof.ZoneKind;
import runtrue.roof.health.HealthKind;
import runtrue.roof.health.HealthLine;
import runtrue.roof.stated.Mistake;
import runtrue.roof.stated.StatedValue;
import runtrue.rules.Judgement;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.Severity;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.concede.Concession;
import runtrue.rules.concede.ConcessionUse;
import runtrue.rules.wind.BodyWind;
import runtrue.rules.wind.BodyZones;
import runtrue.rules.wind.PlaneZone;
import runtrue.rules.wind.ZoneUplift;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;
import runtrue.wind.ClipDemand;

/** An invented one-plane roof, 10 m wide and 6 m up the fall at a slope of 3 in 4, far from the world's zero. */
public final class InventedHall {
    /** Drop origin; easting and northing as large as those of a survey grid. */
    public static final Vector3D ORIGIN = Vector3D.of(430_000, 5_300_000, 120);

    private static final GeometryFactory PLAN = new GeometryFactory();

    private static final Element PURLIN = element("3Purlin", "Purlin", "IfcMember", 50);

    private InventedHall() {}

    public static CheckInput input() {
        return input("1", "ab".repeat(32));
    }

    /** The same by another version of the rule set, from a file with another digest. */
    public static CheckInput input(String ruleSetVersion, String sha256) {
        Element slab = element("1SlabSlabSlabSlabSlab0", "Roof slab", "IfcSlab", 40);
        RoofPlane plane = plane(slab);
        return new CheckInput(
                "0.1.0",
                "2026-03-02T08:00:00Z",
                "Mill Lane, drop 3",
                List.of(new FileInfo(
                        "architecture.ifc",
                        1234,
                        sha256,
                        "IFC4",
                        "Invented 1",
                        "0InventedHall000000000",
                        0.001,
                        "2026-03-01T10:00:00",
                        99,
                        1,
                        1,
                        1,
                        List.of("No true north."))),
                new RuleSetInfo(
                        "Demo",
                        ruleSetVersion,
                        "rules/demo.yml",
                        "cd".repeat(32),
                        List.of(
                                new RuleSetInfo.Rule("pitch", "Least pitch", runtrue.result.Severity.CRITICAL),
                                new RuleSetInfo.Rule("span", "Greatest span", runtrue.result.Severity.MAJOR),
                                new RuleSetInfo.Rule("idle", "Meets nothing", runtrue.result.Severity.NOTE))),
                new RoofSystem(
                        "demo",
                        "Demo pan",
                        "invented for the demo",
                        "rules/systems/demo.yml",
                        Map.of("expansion", new Quantity(11.7e-6, "1/K"), "cover_width", new Quantity(0.5, "mm")),
                        Map.of("material", "steel"),
                        Map.of()),
                List.of(new Setting("cover width", "500 mm", Setting.Origin.FILE, "runtrue.yml")),
                roof(plane),
                List.of(zones(new Zone("B-1", plane.id(), ZoneKind.CORNER, 1.0, 4, rectangle(0, 0, 2, 2), 0.75))),
                judgements(slab, plane),
                List.of(new ConcessionUse(
                        new Concession(
                                "F-9",
                                "R. Aldous",
                                "RFI 27",
                                Optional.of(LocalDate.of(2027, 3, 31)),
                                Optional.of(new Quantity(2.45, "mm")),
                                "concessions.yaml:2"),
                        ConcessionUse.State.UNKNOWN,
                        "No finding of this drop has that id.")),
                new BillInput(
                        new Bill(
                                List.of(sheets()),
                                List.of(new BillFigure(
                                        "Longest roof sheet", OptionalDouble.of(6), "m", "", "as ordered")),
                                List.of(),
                                List.of(new MayServe("P-1", 1, "P-1", 2, 6, 0.5, MayServe.Way.SIDE_BY_SIDE))),
                        new BuildUp("ours", "Ours", "Invented for the demo", "ours.yaml", Map.of(), List.of()),
                        Optional.of(new RateList(
                                "rates.csv",
                                List.of(
                                        new RateList.Entry("roof-sheet", "m", 12.5, "EUR", 2),
                                        new RateList.Entry("dovecote", "pcs", 900, "EUR", 3)))),
                        List.of(new ModelledCount(
                                "P-1",
                                "SCREW",
                                "IfcMechanicalFastener",
                                12,
                                1,
                                "by the count that it states",
                                List.of(),
                                OptionalDouble.empty(),
                                "the bill counts nothing of this name",
                                List.of("2Screw")))),
                List.of(new UnreadElement(
                        "2Bad", "Dome", "IfcRoof", "architecture.ifc", 77, "Roof", "roof", "Body/AdvancedBrep", "No.")),
                trust(slab),
                List.of(new GridAxis(
                        "Grid",
                        "B",
                        List.of(Vector3D.of(430_000, 5_300_000, 120), Vector3D.of(430_012, 5_300_000, 120)))));
    }

    private static BillLine sheets() {
        return new BillLine(
                "roof-sheet/6.000",
                "roof-sheet",
                "Sheets",
                "Roof sheet",
                "full width",
                "m2",
                59.5,
                60,
                60,
                List.of(new BillLine.Difference("openings", 0.5)),
                20,
                "sheet",
                6,
                OptionalDouble.of(390),
                List.of(new BillLine.Pieces(6, 20)),
                Optional.of(new StockPlan(
                        12,
                        0.003,
                        10,
                        10,
                        "total length",
                        false,
                        0,
                        List.of(new StockPlan.Pattern(
                                10,
                                List.of(new StockPlan.Cut(
                                        6, 2, List.of(new StockPlan.Use("P-1", "sheets of plane P-1", 20)))),
                                0)))),
                "counted",
                "Snapped on.",
                "Common practice, no source",
                List.of(new BillLine.Part("P-1", "", List.of(), 59.5, 20, List.of("P-1"))));
    }

    /** A purlin that was read with a body. */
    public static ReadElement read(Shape.Body body) {
        return new ReadElement(PURLIN, "class only", body);
    }

    private static Trust trust(Element slab) {
        return new Trust(
                List.of(new ReadElement(
                        PURLIN, "class only", new Shape.Body(List.of(), false, Optional.empty(), "Body", List.of()))),
                List.of(
                        new StatedValue(
                                slab,
                                true,
                                new StatedQuantity(
                                        StatedKind.PITCH,
                                        AreaMeaning.NONE,
                                        "Pset_SlabCommon.PitchAngle",
                                        0,
                                        0,
                                        true,
                                        false),
                                0,
                                OptionalDouble.of(Math.atan2(3, 4)),
                                "pitch of its upper side",
                                Math.toRadians(0.5),
                                Mistake.ZERO,
                                "",
                                List.of("P-1")),
                        new StatedValue(
                                slab,
                                true,
                                new StatedQuantity(
                                        StatedKind.THICKNESS,
                                        AreaMeaning.NONE,
                                        "material layers",
                                        0.2,
                                        0.2,
                                        true,
                                        false),
                                0.2,
                                OptionalDouble.empty(),
                                "",
                                0,
                                Mistake.NONE,
                                "it is a surface",
                                List.of("P-1"))),
                List.of(
                        new HealthLine(HealthKind.NO_TRUE_NORTH, "architecture.ifc", "", List.of()),
                        new HealthLine(
                                HealthKind.SAME_GEOMETRY,
                                "architecture.ifc",
                                "",
                                List.of(new HealthLine.Item(slab, "as IfcSlab (#41)")))));
    }

    private static RoofPlane plane(Element slab) {
        PlaneFrame frame = new PlaneFrame(
                Vector3D.of(1, 2, 3), Vector3D.of(1, 0, 0), Vector3D.of(0, 0.8, 0.6), Vector3D.of(0, -0.6, 0.8));
        return new RoofPlane(
                "P-1",
                "Hall / south plane",
                frame,
                rectangle(0, 0, 10, 6),
                Math.atan2(3, 4),
                OptionalDouble.of(Math.PI),
                OptionalDouble.of(-Math.PI / 2),
                60,
                60,
                48,
                48,
                123,
                126.6,
                OptionalDouble.of(0.2),
                "Hall",
                "Roof",
                List.of(),
                List.of(new ReadElement(slab, "predefined type ROOF", body())),
                List.of("thickness assumed"),
                Optional.empty());
    }

    private static Roof roof(RoofPlane plane) {
        SupportPiece piece = new SupportPiece(
                PURLIN, SupportEvidence.POSITION, 0, 1, 10, 1, -0.2, 0.06, 0.2, OptionalDouble.empty());
        PlaneLayout layout = new PlaneLayout(
                plane,
                List.of(new Sheet(1, new Interval(0, 0.5), new Interval(0, 6), 6.0000000004, 3, false, false, false)),
                List.of(new SupportLine("P-1/L1", 1, 1, List.of(piece), List.of(new Interval(0, 10)))),
                List.of(),
                List.of(new Span(
                        SpanKind.EAVE_OVERHANG, 1, 1, new Interval(0, 10), new Interval(-0.0, 1), "", "P-1/L1")),
                List.of());
        return new Roof(
                List.of(layout),
                List.of(new RoofEdge(
                        "E-1",
                        EdgeKind.EAVE,
                        List.of("P-1"),
                        Vector3D.of(1, 2, 3),
                        Vector3D.of(11, 2, 3),
                        10,
                        OptionalDouble.empty(),
                        OptionalDouble.empty())),
                List.of(new RoofBody("B-1", List.of("P-1"), rectangle(1, 2, 11, 6.8), 4.8, 10, 123, 126.6)),
                List.of(new Roof.Unplaced(
                        new ReadElement(element("4Under", "Deck", "IfcSlab", 60), "under IfcRoof", body()),
                        "Lies under another layer.")),
                new RoofSettings(
                        0.5,
                        SetOut.LEFT,
                        OptionalDouble.empty(),
                        0.5,
                        ORIGIN,
                        OptionalDouble.empty(),
                        Tolerances.standard()));
    }

    private static List<Judgement> judgements(Element slab, RoofPlane plane) {
        return List.of(
                judgement("F-3", "span", Outcome.CONFORMS, plane.id(), List.of(), 1.0, 1.5),
                judgement("F-2", "span", Outcome.NOT_ASSESSED, plane.id(), List.of(), Double.NaN, Double.NaN),
                judgement("F-1", "pitch", Outcome.DOES_NOT_CONFORM, plane.id(), List.of(slab), 1.2, 1.0));
    }

    private static Judgement judgement(
            String id, String rule, Outcome outcome, String plane, List<Element> elements, double value, double limit) {
        boolean judged = !Double.isNaN(value);
        return new Judgement(
                id,
                rule,
                "Title of " + rule,
                Severity.MAJOR,
                outcome,
                "subject of " + id,
                plane,
                elements,
                Optional.of(ORIGIN.add(Vector3D.of(1, 2, 3))),
                judged ? Optional.of(new Quantity(value, "mm")) : Optional.empty(),
                judged ? Optional.of(new Quantity(limit, "mm")) : Optional.empty(),
                judged ? Optional.of(new Quantity(limit - value, "mm")) : Optional.empty(),
                "at most",
                "invented",
                "message",
                "",
                judged ? "" : "no support found",
                List.of("span = 1 m (derived)"));
    }

    private static Element element(String globalId, String name, String ifcClass, int id) {
        return new Element(
                globalId,
                "architecture.ifc",
                id,
                ifcClass,
                "",
                "",
                name,
                "",
                "",
                "Hall",
                "Roof",
                "",
                "",
                List.of(),
                List.of(),
                Map.of());
    }

    private static Shape.Body body() {
        return new Shape.Body(List.of(), true, Optional.empty(), "Body/SweptSolid", List.of());
    }

    private static Polygon rectangle(double u0, double v0, double u1, double v1) {
        return PLAN.createPolygon(new Coordinate[] {
            new Coordinate(u0, v0),
            new Coordinate(u0, v1),
            new Coordinate(u1, v1),
            new Coordinate(u1, v0),
            new Coordinate(u0, v0)
        });
    }

    /** Zone F by a standard: 1.3 kPa times 1.5 on 0.375 m2 is 0.73125 kN of 1.2 kN. */
    private static BodyZones zones(Zone zone) {
        ZoneUplift uplift = new ZoneUplift(
                OptionalDouble.of(1300),
                OptionalDouble.empty(),
                OptionalDouble.of(1.5),
                Optional.of(new ClipDemand(731.25, 0.609375, 1.2307692, 1.625)),
                false,
                "EN 1991-1-4:2005+A1:2010",
                "EN 1991-1-4:2005+A1:2010, table 7.4a (read in a reproduction of the standard).",
                "F (wind 0°): invented for the test.");
        BodyWind wind = new BodyWind(
                "EN 1991-1-4:2005+A1:2010",
                "mono-pitch roof",
                List.of("At 9.00 m: peak velocity pressure 496 Pa."),
                List.of("Level ground."),
                List.of(),
                List.of("Table 7.4a."),
                "Wind, for checking only.");
        return new BodyZones("B-1", List.of(new PlaneZone(zone, "F", uplift)), Map.of(), List.of(wind));
    }
}
