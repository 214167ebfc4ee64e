package runtrue.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runtrue.bill.StockPlan.Cut;
import runtrue.bill.StockPlan.Pattern;
import runtrue.bill.StockPlan.Use;
import runtrue.roof.EdgeKind;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.roof.RoofEdge;
import runtrue.rules.buildup.BuildUp;
import runtrue.rules.buildup.BuildUps;

/** What is cut from stock lengths, by hand. */
class StockBillsTest {
    @TempDir
    Path folder;

    private BuildUp buildUp(String item) throws IOException {
        Path file = folder.resolve("ours.yaml");
        Files.writeString(file, """
                build_up: ours
                title: Ours
                source: Invented for the test
                items:
                """ + item.indent(2));
        return BuildUps.load(file);
    }

    private static Roof withEdges(PlaneLayout plane, RoofEdge... edges) {
        return new Roof(
                List.of(plane),
                List.of(edges),
                List.of(),
                List.of(),
                BillsTest.roof(plane).settings());
    }

    private static RoofEdge eave(String id, double length) {
        return new RoofEdge(
                id,
                EdgeKind.EAVE,
                List.of("A"),
                Vector3D.ZERO,
                Vector3D.of(length, 0, 0),
                length,
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private BillLine eaves(String more, RoofEdge... edges) throws IOException {
        BuildUp buildUp = buildUp("""
                - id: eave-flashing
                  name: Eave flashing
                  section: Flashings
                  kind: length
                  for: edge
                  edges: [eave]
                  quantity: edge.length
                  unit: m
                  lap: 100 mm
                  stock: 3 m
                  source: Invented for the test
                """ + more.indent(2));
        Roof roof = withEdges(BillsTest.plane("A", 10, 6, 5), edges);
        BillLine line = BillsTest.line(
                Bills.of(roof, List.of(), BillsTest.SYSTEM, BillsTest.SETTINGS, buildUp), "eave-flashing");
        BillsTest.addsUp(line);
        return line;
    }

    /** 10.2 m takes three whole lengths and 10.2 - 3 x 2.9 = 1.5; twice that: six, and both rests from a seventh. */
    @Test
    void what_is_left_of_one_run_closes_another() throws IOException {
        BillLine line = eaves("", eave("E-1", 10.2), eave("E-2", 10.2));
        assertThat(line.count()).isEqualTo(7);
        assertThat(line.ordered()).isEqualTo(21);
        assertThat(line.differences()).containsExactly(new BillLine.Difference("laps of 100 mm", 0.6));
        StockPlan plan = line.cutting().orElseThrow();
        assertThat(plan.proved()).isTrue();
        assertThat(plan.patterns())
                .containsExactly(
                        new Pattern(6, List.of(new Cut(3, 1, List.of(use("E-1", 3), use("E-2", 3)))), 0),
                        new Pattern(1, List.of(new Cut(1.5, 2, List.of(use("E-1", 1), use("E-2", 1)))), 0));
    }

    private static Use use(String edge, long count) {
        return new Use(edge, "eave " + edge, count);
    }

    /** 5.95 m: (5.95 - 0.1) / 2.9 = 2.02, three pieces, the last 5.95 - 5.8 = 0.15; with 0.3 at least, 2.85 before it. */
    @Test
    void a_run_is_not_closed_by_a_sliver() throws IOException {
        assertThat(eaves("", eave("E-1", 5.95)).pieces())
                .containsExactly(new BillLine.Pieces(3, 2), new BillLine.Pieces(0.15, 1));
        assertThat(eaves("shortest: 300 mm", eave("E-1", 5.95)).pieces())
                .containsExactly(new BillLine.Pieces(3, 1), new BillLine.Pieces(2.85, 1), new BillLine.Pieces(0.3, 1));
    }

    /** Two pieces of 1.5 m and a cut of 5 mm are more than 3 m. */
    @Test
    void a_kerf_takes_its_share() throws IOException {
        assertThat(eaves("kerf: 5 mm", eave("E-1", 1.5), eave("E-2", 1.5)).count())
                .isEqualTo(2);
        assertThat(eaves("", eave("E-1", 1.5), eave("E-2", 1.5)).count()).isEqualTo(1);
    }

    private Bill sheets(PlaneLayout... planes) throws IOException {
        BuildUp buildUp = buildUp("""
                - id: roof-sheet
                  name: Roof sheet
                  section: Sheets
                  kind: sheet
                  for: sheet
                  quantity: sheet.order_length
                  unit: m2
                  stock: 6 m
                  source: Invented for the test
                """);
        Roof roof = BillsTest.roof(planes);
        return Bills.of(roof, List.of(), BillsTest.SYSTEM, BillsTest.SETTINGS, buildUp);
    }

    /**
     * Plane A, 10.2 x 2.9: 21 sheets; plane B, 10 x 3.1: 20 sheets. One of each from 6 m, and the last of A alone: 21 stock
     * sheets of 0.5 x 6 = 63 m2. Net 10.2 x 2.9 + 10 x 3.1 = 60.58; trimmed off 0.3 x 2.9 = 0.87; left 3.1 x 0.5 = 1.55.
     */
    @Test
    void sheets_are_cut_in_one_piece_each_from_stock_lengths() throws IOException {
        Bill bill = sheets(BillsTest.plane("A", 10.2, 2.9, 3), BillsTest.plane("B", 10, 3.1, 3));
        BillLine line = BillsTest.line(bill, "roof-sheet");
        BillsTest.addsUp(line);
        assertThat(line.id()).isEqualTo("roof-sheet/stock-6.000");
        assertThat(line.count()).isEqualTo(21);
        assertThat(line.net()).isEqualTo(60.58);
        assertThat(line.ordered()).isEqualTo(63);
        assertThat(line.differences()).extracting(BillLine.Difference::quantity).containsExactly(0.87, 1.55);
        assertThat(line.cutting().orElseThrow().patterns())
                .extracting(Pattern::times, Pattern::rest)
                .containsExactly(tuple(20L, 0.0), tuple(1L, 3.1));
    }

    @Test
    void a_sheet_that_is_longer_than_the_stock_is_ordered_by_its_own_length() throws IOException {
        Bill bill = sheets(BillsTest.plane("A", 10, 2, 3), BillsTest.plane("B", 10, 7.5, 5));
        assertThat(BillsTest.lines(bill, "roof-sheet"))
                .extracting(BillLine::id, BillLine::count)
                .containsExactlyInAnyOrder(tuple("roof-sheet/stock-6.000", 7L), tuple("roof-sheet/7.500", 20L));
    }

    /** Where nothing says how: 1.2 x 15 m cover 1.15 x 14.9, so 122.4 m2 take 122.4 x 18 / 17.135 = 128.579. */
    @Test
    void rolls_lose_their_laps_by_area_where_nothing_says_how_they_are_laid() throws IOException {
        BuildUp buildUp = buildUp("""
                - id: blanket
                  name: Blanket
                  section: Insulation
                  kind: roll
                  for: plane
                  quantity: plane.area
                  unit: m2
                  lap: 100 mm
                  side lap: 50 mm
                  roll: {width: 1.2 m, length: 15 m}
                  source: Invented for the test
                """);
        Roof roof = BillsTest.roof(BillsTest.plane("A", 20.4, 6, 3));
        BillLine blanket =
                BillsTest.line(Bills.of(roof, List.of(), BillsTest.SYSTEM, BillsTest.SETTINGS, buildUp), "blanket");
        assertThat(blanket.differences().get(0).quantity()).isCloseTo(128.579 - 122.4, within(1e-3));
        assertThat(blanket.count()).isEqualTo(8);
    }
}
