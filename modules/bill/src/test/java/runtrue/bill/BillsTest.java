package runtrue.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import runtrue.ifc.Element;
import runtrue.roof.EdgeKind;
import runtrue.roof.Interval;
import runtrue.roof.PlaneFrame;
import runtrue.roof.PlaneLayout;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.RoofSettings;
import runtrue.roof.Roofs;
import runtrue.roof.SetOut;
import runtrue.roof.SupportLine;
import runtrue.roof.Zone;
import runtrue.roof.ZoneKind;
import runtrue.roof.sheet.SheetLayout;
import runtrue.rules.DropSettings;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.RoofSystems;
import runtrue.rules.SettingsFiles;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.buildup.BuildUps;
import runtrue.shape.Face;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;

/** A roof of two like planes, each 10.2 m across and 6 m up the fall, on five lines from verge to verge. */
class BillsTest {
    static final RoofSystem SYSTEM = RoofSystems.bundled("kestrel-500");
    static final DropSettings SETTINGS = SettingsFiles.load(Optional.empty(), Optional.empty(), Map.of());

    private static final BuildUp SINGLE = BuildUps.bundled("single-skin");
    private static final BuildUp DOUBLE = BuildUps.bundled("double-skin");

    static PlaneLayout plane(String id, double width, double run, int lines) {
        Polygon outline = (Polygon) new GeometryFactory().toGeometry(new Envelope(0, width, 0, run));
        return plane(id, outline, SetOut.LEFT, lines);
    }

    static PlaneLayout plane(String id, Polygon outline, SetOut setOut, int lines) {
        double width = outline.getEnvelopeInternal().getWidth();
        double run = outline.getEnvelopeInternal().getHeight();
        double area = outline.getArea();
        PlaneFrame frame =
                new PlaneFrame(Vector3D.ZERO, Vector3D.Unit.PLUS_X, Vector3D.Unit.PLUS_Y, Vector3D.Unit.PLUS_Z);
        OptionalDouble none = OptionalDouble.empty();
        RoofPlane plane = new RoofPlane(
                id,
                id,
                frame,
                outline,
                0.1,
                none,
                none,
                area,
                area,
                area,
                area,
                0,
                0,
                none,
                "",
                "",
                List.of(),
                List.of(),
                List.of(),
                Optional.empty());
        List<SupportLine> supports = new ArrayList<>();
        for (int i = 0; i < lines; i++) {
            double v = 0.2 + i * (run - 0.4) / Math.max(1, lines - 1);
            supports.add(new SupportLine(id + "/L" + i, i + 1, v, List.of(), List.of(new Interval(0, width))));
        }
        return new PlaneLayout(plane, SheetLayout.of(outline, 0.5, setOut), supports, List.of(), List.of(), List.of());
    }

    static Roof roof(PlaneLayout... planes) {
        RoofEdge ridge = new RoofEdge(
                "E-1",
                EdgeKind.RIDGE,
                List.of("A", "B"),
                Vector3D.ZERO,
                Vector3D.of(10.2, 0, 0),
                10.2,
                OptionalDouble.empty(),
                OptionalDouble.empty());
        RoofSettings settings = new RoofSettings(
                0.5,
                SetOut.LEFT,
                OptionalDouble.empty(),
                0.5,
                Vector3D.ZERO,
                OptionalDouble.empty(),
                Tolerances.standard());
        return new Roof(List.of(planes), List.of(ridge), List.of(), List.of(), settings);
    }

    private static Bill bill(Roof roof, RoofSystem system) {
        return Bills.of(roof, List.of(), system, SETTINGS, SINGLE);
    }

    private static Bill bill() {
        return bill(roof(plane("A", 10.2, 6, 5), plane("B", 10.2, 6, 5)), SYSTEM);
    }

    static List<BillLine> lines(Bill bill, String item) {
        return bill.lines().stream().filter(l -> l.item().equals(item)).toList();
    }

    static BillLine line(Bill bill, String item) {
        assertThat(lines(bill, item)).as(item).hasSize(1);
        return lines(bill, item).get(0);
    }

    private static double figure(Bill bill, String what) {
        return bill.figures().stream()
                .filter(f -> f.what().equals(what))
                .findFirst()
                .orElseThrow()
                .value()
                .orElseThrow();
    }

    @Test
    void sheets_are_grouped_by_length_and_the_trimmed_strip_stands_apart() {
        assertThat(lines(bill(), "roof-sheet"))
                .extracting(BillLine::variant, BillLine::count, BillLine::length)
                .containsExactly(tuple("full width", 40L, 6.0), tuple("trimmed to 200 mm", 2L, 6.0));
    }

    /** 2 x 0.2 x 6 = 2.4 m2 of roof from 2 x 0.5 x 6 = 6 m2 of sheet: 3.6 m2 are cut off. */
    @Test
    void what_is_trimmed_off_is_waste_with_its_reason() {
        BillLine trimmed = lines(bill(), "roof-sheet").get(1);
        assertThat(trimmed.net()).isEqualTo(2.4);
        assertThat(trimmed.ordered()).isEqualTo(6.0);
        assertThat(trimmed.differences()).containsExactly(new BillLine.Difference("strips trimmed in width", 3.6));
    }

    /** 2 planes x 21 sheets x 6 m = 252 m, at 0.5 m cover 126 m2. */
    @Test
    void total_length_and_cover_area_count_the_trimmed_sheet_in_full() {
        assertThat(figure(bill(), "Roof sheets, total length")).isEqualTo(252);
        assertThat(figure(bill(), "Roof sheets, cover area")).isEqualTo(126);
        assertThat(figure(bill(), "Roof area, openings taken off")).isEqualTo(122.4);
        assertThat(figure(bill(), "Roof sheets, cover area that covers no roof"))
                .isEqualTo(3.6);
    }

    /** 6 m, 55 mm into the gutter and 30 mm short of the ridge: 6025 mm, in steps of 10 mm 6030. */
    @Test
    void sheets_are_ordered_with_what_their_ends_need() {
        PlaneLayout plane = plane("A", 10.2, 6, 5);
        Roof roof = new Roof(
                List.of(plane),
                List.of(edge("E-1", EdgeKind.EAVE, 0), edge("E-2", EdgeKind.HEAD, 6)),
                List.of(),
                List.of(),
                roof(plane).settings());

        assertThat(sheetLengths(roof, Map.of())).containsOnly(6.0);
        assertThat(sheetLengths(roof, Map.of("gutter_overhang", 0.055))).containsOnly(6.055);
        assertThat(sheetLengths(roof, Map.of("gutter_overhang", 0.055, "ridge_set_back", 0.03, "cutting_step", 0.01)))
                .containsOnly(6.03);
    }

    /** Barrel of 30 m radius over 32 degrees: 30 x 0.558505 = 16.755 m of arc, 55 mm more into each gutter. */
    @Test
    void curved_sheets_stand_apart_and_reach_into_the_gutters_at_both_eaves() {
        List<Face> faces = new ArrayList<>();
        for (int i = -8; i < 8; i++) {
            Vector3D a = Vector3D.of(0, 30 * Math.sin(Math.toRadians(2 * i)), 30 * Math.cos(Math.toRadians(2 * i)));
            Vector3D b =
                    Vector3D.of(0, 30 * Math.sin(Math.toRadians(2 * i + 2)), 30 * Math.cos(Math.toRadians(2 * i + 2)));
            Vector3D along = Vector3D.of(12.2, 0, 0);
            faces.add(new Face(
                    along.cross(b.subtract(a)).normalize(), List.of(a, a.add(along), b.add(along), b), List.of()));
        }
        Element element = new Element(
                "barrel", "r.ifc", 1, "IfcRoof", "", "", "Barrel", "", "", "", "", "", "", List.of(), List.of(),
                Map.of());
        Shape.Body body = new Shape.Body(faces, false, Optional.empty(), "Body", List.of());
        Roof roof = Roofs.layOut(List.of(new ReadElement(element, "type", body)), List.of(), roof().settings());
        Map<String, Quantity> values = new TreeMap<>(SYSTEM.values());
        values.put("gutter_overhang", new Quantity(0.055, "mm"));
        Bill bill = bill(roof, new RoofSystem("ends", "", "", "", values, Map.of(), Map.of()));

        assertThat(lines(bill, "roof-sheet"))
                .allMatch(l -> l.id().endsWith("/curved"))
                .extracting(BillLine::variant, BillLine::count, BillLine::length)
                .containsExactly(tuple("full width", 24L, 16.865), tuple("trimmed to 200 mm", 1L, 16.865));
    }

    static RoofEdge edge(String id, EdgeKind kind, double v) {
        return new RoofEdge(
                id,
                kind,
                List.of("A"),
                Vector3D.of(0, v, 0),
                Vector3D.of(10.2, v, 0),
                10.2,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static List<Double> sheetLengths(Roof roof, Map<String, Double> metres) {
        Map<String, Quantity> values = new TreeMap<>(SYSTEM.values());
        metres.forEach((name, value) -> values.put(name, new Quantity(value, "mm")));
        RoofSystem system = new RoofSystem("ends", "", "", "", values, Map.of(), Map.of());
        return lines(bill(roof, system), "roof-sheet").stream()
                .map(BillLine::length)
                .toList();
    }

    /** Ribs at 0, 0.5 ... 10.0 and 10.2: 22 of them, on 5 lines, on 2 planes; 1 % and whole boxes of 250. */
    @Test
    void a_clip_sits_on_every_support_under_every_rib() {
        BillLine clips = line(bill(), "clip");
        assertThat(clips.net()).isEqualTo(220);
        assertThat(clips.gross()).isEqualTo(222.2);
        assertThat(clips.ordered()).isEqualTo(250);
        assertThat(clips.count()).isEqualTo(1);
        assertThat(clips.each()).isEqualTo("box of 250 pcs");
        assertThat(clips.variant()).isEqualTo("zone not known 220");
        assertThat(clips.method()).endsWith("where no edge zones were formed, all as one zone");
        assertThat(line(bill(), "clip-screw").net()).isEqualTo(440);
    }

    /** Corners 1 m wide at both ends of plane A: ribs 0, 0.5, 1 and 9.5, 10, 10.2 with 5 clips each; 16 ribs between. */
    @Test
    void clips_are_told_apart_by_zone() {
        Roof roof = roof(plane("A", 10.2, 6, 5));
        GeometryFactory factory = new GeometryFactory();
        List<Zone> zones = List.of(
                new Zone("B", "A", ZoneKind.INTERIOR, 1, 1, factory.toGeometry(new Envelope(1, 9.2, 0, 6)), 1),
                new Zone("B", "A", ZoneKind.CORNER, 1, 1, factory.toGeometry(new Envelope(0, 1, 0, 6)), 1),
                new Zone("B", "A", ZoneKind.CORNER, 1, 1, factory.toGeometry(new Envelope(9.2, 10.2, 0, 6)), 1));
        BillLine clips = line(Bills.of(roof, zones, SYSTEM, SETTINGS, SINGLE), "clip");
        assertThat(clips.variant()).isEqualTo("corner 30, interior 80");
        assertThat(clips.parts())
                .extracting(BillLine.Part::zone, BillLine.Part::net)
                .containsExactlyInAnyOrder(tuple("corner", 30.0), tuple("interior", 80.0));
    }

    /** 10.2 m in pieces of 3 m lapped by 0.1: (10.2 - 0.1) / 2.9 = 3.48, so 4; three whole and 10.2 - 3 x 2.9 = 1.5. */
    @Test
    void a_flashing_is_lapped_and_ordered_in_stock_lengths() {
        BillLine ridge = line(bill(), "ridge-cap");
        assertThat(ridge.net()).isEqualTo(10.2);
        assertThat(ridge.gross()).isEqualTo(10.5);
        assertThat(ridge.count()).isEqualTo(4);
        assertThat(ridge.ordered()).isEqualTo(12);
        assertThat(ridge.pieces()).containsExactly(new BillLine.Pieces(3, 3), new BillLine.Pieces(1.5, 1));
        assertThat(line(bill(), "stop-end").net()).isEqualTo(2);
    }

    @Test
    void a_shared_edge_counts_once_and_names_the_plane_that_shares_it() {
        BillLine ridge = line(bill(), "ridge-cap");
        assertThat(ridge.parts()).containsExactly(new BillLine.Part("A", "", List.of("B"), 10.2, 4, List.of("E-1")));
    }

    /** A ridge over two planes: 22 ribs end on it from either side. */
    @Test
    void fillers_close_every_rib_that_ends_on_an_edge() {
        assertThat(line(bill(), "rib-filler").net()).isEqualTo(44);
    }

    /**
     * Base steel of 0.60 mm weighs 4.710 kg/m2 (7850 kg/m3; worked in the project's trade checks), so 4.710 x girth /
     * cover for each square metre of cover.
     */
    @Test
    void mass_is_that_of_the_strip_the_sheet_is_rolled_from() {
        assertThat(figure(bill(), "Roof sheets, mass")).isCloseTo(4.710 * 0.690 / 0.5 * 126, within(5e-4));
        double ofLines = lines(bill(), "roof-sheet").stream()
                .mapToDouble(l -> l.mass().orElseThrow())
                .sum();
        assertThat(ofLines).isCloseTo(4.710 * 0.690 / 0.5 * 126, within(1e-3));
    }

    /**
     * Blanket of 1.2 x 15 m along the fall, laps 50 and 100: (10.2 - 0.05) / 1.15 = 8.83, 9 courses of 6 m on each plane, 108 m of
     * roll; (108 - 0.1) / 14.9 = 7.24, so 8 rolls. 108 x 1.2 = 129.6; 2 x 8 x 6 x 0.05 = 4.8 lie in side laps, 7 x 0.1 x 1.2 = 0.84
     * in end laps; 122.4 of roof.
     */
    @Test
    void rolls_are_counted_by_their_courses() {
        BillLine blanket = line(bill(), "blanket");
        assertThat(blanket.net()).isEqualTo(122.4);
        assertThat(blanket.differences())
                .extracting(BillLine.Difference::quantity)
                .containsExactly(2.4, 4.8, 0.84, 13.56);
        assertThat(blanket.count()).isEqualTo(8);
        assertThat(blanket.method()).endsWith("18 courses along the fall, 108.000 m of roll");
    }

    @Test
    void what_the_system_does_not_state_is_missing_and_never_nothing() {
        Map<String, Quantity> values = new TreeMap<>(SYSTEM.values());
        values.remove("girth");
        values.remove("clip_spacing");
        RoofSystem poor = new RoofSystem("poor", "", "", "", values, Map.of(), Map.of());
        Bill bill = bill(roof(plane("A", 10, 6, 5)), poor);
        assertThat(bill.missing())
                .contains(
                        "Roof sheet, its mass: system.girth is not stated by roof system poor",
                        "Clip, Screw of a clip of plane A: the roof system states no clip_spacing");
        assertThat(bill.missing())
                .anyMatch(m -> m.startsWith("Filler between ribs, ridge E-1: edge.ribs is not known"));
        assertThat(bill.lines()).extracting(BillLine::item).doesNotContain("clip", "clip-screw", "rib-filler");
        assertThat(lines(bill, "roof-sheet")).allMatch(l -> l.mass().isEmpty());
    }

    @Test
    void clips_of_a_plane_without_supports_are_missing() {
        Bill bill = bill(roof(plane("A", 10, 6, 0)), SYSTEM);
        assertThat(bill.missing())
                .contains("Screw with washer of the mesh, Washer of the mesh, Clip, Screw of a clip of plane A:"
                        + " no support lines were found");
        assertThat(bill.lines()).extracting(BillLine::item).doesNotContain("clip");
    }

    @Test
    void transport_and_rolling_are_not_assessed_where_the_settings_say_nothing() {
        assertThat(bill().figures())
                .filteredOn(f -> f.what().startsWith("Longest roof sheet against"))
                .hasSize(2)
                .allMatch(f -> f.verdict().equals("not assessed") && f.value().isEmpty());
    }

    @Property(tries = 60)
    void every_line_is_exactly_the_sum_of_its_parts_and_its_differences(
            @ForAll @DoubleRange(min = 0.3, max = 40) double width,
            @ForAll @DoubleRange(min = 0.5, max = 30) double run) {
        for (BuildUp buildUp : List.of(SINGLE, DOUBLE)) {
            Roof roof = roof(plane("A", width, run, 4), plane("B", run, width, 3));
            Bill bill = Bills.of(roof, List.of(), SYSTEM, SETTINGS, buildUp);
            assertThat(bill.lines()).isNotEmpty().allSatisfy(BillsTest::addsUp);
        }
    }

    static void addsUp(BillLine line) {
        BigDecimal parts =
                line.parts().stream().map(p -> BigDecimal.valueOf(p.net())).reduce(BigDecimal.ZERO, BigDecimal::add);
        assertThat(parts).as(line.id()).isEqualByComparingTo(BigDecimal.valueOf(line.net()));
        BigDecimal ordered = line.differences().stream()
                .map(d -> BigDecimal.valueOf(d.quantity()))
                .reduce(BigDecimal.valueOf(line.net()), BigDecimal::add);
        assertThat(ordered).as(line.id()).isEqualByComparingTo(BigDecimal.valueOf(line.ordered()));
        assertThat(line.ordered()).isGreaterThanOrEqualTo(line.gross());
        long pieces = line.pieces().stream().mapToLong(BillLine.Pieces::count).sum();
        long counted = line.parts().stream().mapToLong(BillLine.Part::count).sum();
        assertThat(counted).isIn(0L, line.pieces().isEmpty() ? line.count() : pieces);
    }
}
