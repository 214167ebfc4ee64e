package runtrue.result.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.result.BillResult;
import runtrue.result.CheckResult;
import runtrue.result.Conforming;
import runtrue.result.Finding;
import runtrue.result.InventedHall;
import runtrue.result.Measure;
import runtrue.result.Outcome;
import runtrue.result.PlaneResult;
import runtrue.result.Severity;
import runtrue.result.build.ResultBuilder;

class ComparingTest {
    private static final CheckResult HALL = ResultBuilder.build(InventedHall.input());

    @Test
    void the_same_result_differs_in_nothing() {
        Changes changes = Comparing.of(HALL, HALL);
        assertThat(changes.basis()).isEmpty();
        assertThat(changes.findings()).isEmpty();
        assertThat(changes.planes()).isEmpty();
        assertThat(changes.orders()).isEmpty();
        assertThat(changes.sameFindings()).isEqualTo(HALL.findings().size());
        assertThat(changes.earlierRunStamp()).isEqualTo(HALL.runStamp());
    }

    @Test
    void what_was_found_and_conforms_now_is_gone_with_both_figures() {
        Changes changes = Comparing.of(
                with(List.of(span("F-1", 1350)), List.of()), with(List.of(), List.of(conforming("F-1", 1150))));
        assertThat(changes.findings())
                .extracting(
                        Changes.OfFinding::kind,
                        Changes.OfFinding::before,
                        Changes.OfFinding::now,
                        Changes.OfFinding::words)
                .containsExactly(tuple(
                        ChangeKind.GONE,
                        Optional.of(Outcome.DOES_NOT_CONFORM),
                        Optional.of(Outcome.CONFORMS),
                        "Conforms now: measured 1350 mm, now 1150 mm."));
    }

    @Test
    void what_conforms_by_another_limit_says_so() {
        Changes changes = Comparing.of(
                with(List.of(span("F-1", 1350)), List.of()), with(List.of(), List.of(conforming("F-1", 1350, 1500))));
        assertThat(changes.findings())
                .extracting(Changes.OfFinding::words)
                .containsExactly("Conforms now with 1350 mm as before; limit 1200 mm, now 1500 mm.");
    }

    /** Missing data is never good news: what is not judged any more must not read as cured. */
    @Test
    void what_is_not_judged_any_more_is_not_said_to_conform() {
        Changes changes = Comparing.of(with(List.of(span("F-1", 1350)), List.of()), with(List.of(), List.of()));
        assertThat(changes.findings()).singleElement().satisfies(f -> {
            assertThat(f.kind()).isEqualTo(ChangeKind.GONE);
            assertThat(f.now()).isEmpty();
            assertThat(f.words()).contains("neither a finding nor among what conforms");
        });
    }

    @Test
    void new_ones_come_first_and_say_whether_they_conformed() {
        Changes changes = Comparing.of(
                with(List.of(span("F-1", 1350)), List.of(conforming("F-2", 1190))),
                with(List.of(span("F-1", 1500), span("F-2", 1300), span("F-3", 1400)), List.of()));
        assertThat(changes.findings())
                .extracting(Changes.OfFinding::id, Changes.OfFinding::kind, Changes.OfFinding::words)
                .containsExactly(
                        tuple("F-2", ChangeKind.NEW, "Conformed before with 1190 mm, now 1300 mm."),
                        tuple("F-3", ChangeKind.NEW, "Was not found before."),
                        tuple("F-1", ChangeKind.CHANGED, "Measured 1350 mm, now 1500 mm."));
    }

    @ParameterizedTest
    @CsvSource({"1350.1, 0", "1350.2, 1"})
    void what_moves_by_less_than_a_part_of_ten_thousand_is_as_it_was(double now, int changed) {
        Changes changes =
                Comparing.of(with(List.of(span("F-1", 1350)), List.of()), with(List.of(span("F-1", now)), List.of()));
        assertThat(changes.count(ChangeKind.CHANGED)).isEqualTo(changed);
        assertThat(changes.sameFindings()).isEqualTo(1 - changed);
    }

    @Test
    void planes_and_orders_tell_before_and_now() {
        PlaneResult plane = HALL.planes().get(0);
        BillResult.Line line = HALL.bill().lines().get(0);
        CheckResult none = result(HALL, List.of(), List.of(), List.of(), bill(List.of()));
        assertThat(Comparing.of(none, HALL).planes())
                .containsExactly(new Changes.OfPlane(ChangeKind.NEW, plane.id(), plane.name(), List.of()));
        assertThat(Comparing.of(HALL, none).planes())
                .containsExactly(new Changes.OfPlane(ChangeKind.GONE, plane.id(), plane.name(), List.of()));
        assertThat(Comparing.of(HALL, none).orders()).singleElement().satisfies(o -> {
            assertThat(o.before()).isEqualTo(OptionalDouble.of(line.ordered()));
            assertThat(o.now()).isEmpty();
            assertThat(o.difference()).isEqualTo(-line.ordered());
        });
    }

    @Test
    void what_the_results_rest_on_is_told_since_a_change_may_come_from_there() {
        CheckResult other = ResultBuilder.build(InventedHall.input("2", "ef".repeat(32)));
        assertThat(Comparing.of(HALL, other).basis())
                .containsExactly("File architecture.ifc was issued again.", "Rule set: Demo 1, now Demo 2.");
    }

    private static Finding span(String id, double millimetres) {
        return new Finding(
                id,
                "span",
                "Greatest span",
                Severity.MAJOR,
                Outcome.DOES_NOT_CONFORM,
                "end span",
                "P-1",
                "Plane",
                "",
                List.of(),
                List.of(),
                "",
                Optional.empty(),
                Optional.of(new Measure(millimetres, "mm")),
                Optional.of(new Measure(1200, "mm")),
                Optional.of(new Measure(1200 - millimetres, "mm")),
                "at most",
                "invented",
                "",
                "",
                "",
                List.of());
    }

    private static Conforming conforming(String id, double millimetres) {
        return conforming(id, millimetres, 1200);
    }

    private static Conforming conforming(String id, double millimetres, double limit) {
        return new Conforming(
                id,
                "span",
                "end span",
                "P-1",
                "Plane",
                Optional.of(new Measure(millimetres, "mm")),
                Optional.of(new Measure(limit, "mm")),
                Optional.empty(),
                "at most");
    }

    private static CheckResult with(List<Finding> findings, List<Conforming> conforming) {
        return result(HALL, HALL.planes(), findings, conforming, HALL.bill());
    }

    private static BillResult bill(List<BillResult.Line> lines) {
        BillResult b = HALL.bill();
        return new BillResult(b.buildUp(), lines, b.figures(), b.missing(), b.rates(), b.modelled(), b.offcuts());
    }

    private static CheckResult result(
            CheckResult r,
            List<PlaneResult> planes,
            List<Finding> findings,
            List<Conforming> conforming,
            BillResult bill) {
        return new CheckResult(
                r.format(),
                r.toolVersion(),
                r.runStamp(),
                r.drop(),
                r.files(),
                r.ruleSet(),
                r.roofSystem(),
                r.settings(),
                r.tolerances(),
                r.counts(),
                planes,
                r.edges(),
                r.bodies(),
                r.gridLines(),
                findings,
                conforming,
                r.concessions(),
                bill,
                r.unread(),
                r.unplaced(),
                r.methods(),
                r.stated(),
                r.health(),
                r.cautions(),
                Optional.empty());
    }
}
