package runtrue.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import runtrue.roof.sheet.SheetLayout;
import runtrue.rules.DropSettings;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.RoofSystems;
import runtrue.rules.SettingsFiles;
import runtrue.shape.Face;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;

/** A roof of two like planes, each 10.2 m across and 6 m up the fall, on five lines from verge to verge. */
class BillsTest {
    private static final RoofSystem SYSTEM = RoofSystems.bundled("kestrel-500");
    private static final DropSettings SETTINGS = SettingsFiles.load(Optional.empty(), Optional.empty(), Map.of());

    private static PlaneLayout plane(String id, double width, double run, int lines) {
        Polygon outline = (Polygon) new GeometryFactory().toGeometry(new Envelope(0, width, 0, run));
        double area = width * run;
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
        return new PlaneLayout(
                plane, SheetLayout.of(outline, 0.5, SetOut.LEFT), supports, List.of(), List.of(), List.of());
    }

    private static Roof roof(PlaneLayout... planes) {
        RoofEdge ridge = new RoofEdge(
                "E-1",
                EdgeKind.RIDGE,
                List.of("A", "B"),
                Vector3D.ZERO,
                Vector3D.of(10.2, 0, 0),
                10.2,
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

    private static Bill bill() {
        return Bills.of(roof(plane("A", 10.2, 6, 5), plane("B", 10.2, 6, 5)), SYSTEM, SETTINGS);
    }

    private static double total(Bill bill, String item) {
        List<BillLine> lines =
                bill.totals().stream().filter(l -> l.item().equals(item)).toList();
        assertThat(lines).as(item).hasSize(1);
        return lines.get(0).quantity();
    }

    @Test
    void sheets_are_grouped_by_length_and_the_trimmed_strip_stands_apart() {
        Bill bill = bill();
        assertThat(total(bill, "sheet")).isEqualTo(40);
        assertThat(total(bill, "trimmed sheet")).isEqualTo(2);
        assertThat(bill.lines())
                .filteredOn(l -> l.item().equals("trimmed sheet"))
                .allSatisfy(l -> assertThat(l.description()).isEqualTo("sheet trimmed to 200 mm"))
                .allSatisfy(l -> assertThat(l.length()).isEqualTo(6));
    }

    /** 2 planes x 21 sheets x 6 m = 252 m, at 0.5 m cover 126 m2. */
    @Test
    void total_length_and_cover_area_count_the_trimmed_sheet_in_full() {
        assertThat(total(bill(), "sheet length")).isCloseTo(252, within(1e-9));
        assertThat(total(bill(), "cover area")).isCloseTo(126, within(1e-9));
        assertThat(total(bill(), "net area")).isCloseTo(122.4, within(1e-9));
        assertThat(total(bill(), "waste")).isCloseTo(126 - 122.4, within(1e-9));
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
        Bill bill = Bills.of(roof, new RoofSystem("ends", "", "", "", values, Map.of(), Map.of()), SETTINGS);

        assertThat(total(bill, "curved sheet")).isEqualTo(24);
        assertThat(total(bill, "curved trimmed sheet")).isEqualTo(1);
        assertThat(bill.lines())
                .filteredOn(l -> l.item().equals("curved sheet"))
                .singleElement()
                .satisfies(l -> assertThat(l.length()).isCloseTo(16.755 + 2 * 0.055, within(1e-9)));
        assertThat(bill.lines()).noneMatch(l -> l.item().equals("sheet"));
    }

    private static RoofEdge edge(String id, EdgeKind kind, double v) {
        return new RoofEdge(
                id, kind, List.of("A"), Vector3D.of(0, v, 0), Vector3D.of(10.2, v, 0), 10.2, OptionalDouble.empty());
    }

    private static List<Double> sheetLengths(Roof roof, Map<String, Double> metres) {
        Map<String, Quantity> values = new TreeMap<>(SYSTEM.values());
        metres.forEach((name, value) -> values.put(name, new Quantity(value, "mm")));
        RoofSystem system = new RoofSystem("ends", "", "", "", values, Map.of(), Map.of());
        return Bills.of(roof, system, SETTINGS).lines().stream()
                .filter(l -> l.item().equals("sheet") || l.item().equals("trimmed sheet"))
                .map(BillLine::length)
                .toList();
    }

    /** Ribs at 0, 0.5 ... 10.0 and 10.2: 22 of them, on 5 lines, on 2 planes; 2 screws each. */
    @Test
    void a_clip_sits_on_every_support_under_every_rib() {
        assertThat(total(bill(), "clip")).isEqualTo(220);
        assertThat(total(bill(), "primary fixing")).isEqualTo(440);
    }

    @Test
    void a_shared_edge_counts_once() {
        assertThat(total(bill(), "ridge")).isEqualTo(10.2);
    }

    /**
     * Base steel of 0.60 mm weighs 4.710 kg/m2 (7850 kg/m3; worked in the project's trade checks), so 4.710 x girth /
     * cover for each square metre of cover.
     */
    @Test
    void mass_is_that_of_the_strip_the_sheet_is_rolled_from() {
        assertThat(total(bill(), "sheet mass")).isCloseTo(4.710 * 0.690 / 0.5 * 126, within(1e-6));
    }

    @Test
    void what_the_system_does_not_state_is_missing_and_never_nothing() {
        Map<String, Quantity> values = new TreeMap<>(SYSTEM.values());
        values.remove("girth");
        values.remove("clip_spacing");
        RoofSystem poor = new RoofSystem("poor", "", "", "", values, Map.of(), Map.of());
        Bill bill = Bills.of(roof(plane("A", 10, 6, 5)), poor, SETTINGS);
        assertThat(bill.missing())
                .containsExactly(
                        "sheet mass of plane A: roof system poor states no girth",
                        "clips and primary fixings of plane A: roof system poor states no clip_spacing");
        assertThat(bill.lines()).extracting(BillLine::item).doesNotContain("sheet mass", "clip", "primary fixing");
    }

    @Test
    void clips_of_a_plane_without_supports_are_missing() {
        Bill bill = Bills.of(roof(plane("A", 10, 6, 0)), SYSTEM, SETTINGS);
        assertThat(bill.missing()).containsExactly("clips and primary fixings of plane A: no support lines were found");
        assertThat(bill.lines()).extracting(BillLine::item).doesNotContain("clip");
    }

    @Property(tries = 60)
    void totals_are_the_sums_of_their_lines(
            @ForAll @DoubleRange(min = 0.3, max = 40) double width,
            @ForAll @DoubleRange(min = 0.5, max = 30) double run) {
        Bill bill = Bills.of(roof(plane("A", width, run, 4), plane("B", run, width, 3)), SYSTEM, SETTINGS);
        double lines = bill.lines().stream().mapToDouble(BillLine::quantity).sum();
        double totals = bill.totals().stream().mapToDouble(BillLine::quantity).sum();
        assertThat(totals).isCloseTo(lines, within(1e-9 * Math.max(1, lines)));
        assertThat(bill.totals()).allSatisfy(total -> assertThat(total.plane()).isEmpty());
    }

    @Property(tries = 60)
    void ribs_start_and_end_at_the_edges_and_lie_no_farther_apart_than_the_spacing(
            @ForAll @DoubleRange(min = 0.01, max = 40) double width, @ForAll SetOut setOut) {
        List<Double> ribs = RibLines.of(new Envelope(2, 2 + width, 0, 1), 0.5, 0.5, setOut);
        assertThat(ribs.get(0)).isEqualTo(2);
        assertThat(ribs.get(ribs.size() - 1)).isEqualTo(2 + width);
        for (int i = 1; i < ribs.size(); i++) {
            assertThat(ribs.get(i) - ribs.get(i - 1)).isBetween(0.0005, 0.5 + 1.1e-3);
        }
    }
}
