package runtrue.rules.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import runtrue.roof.Interval;
import runtrue.roof.SpanKind;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.cel.Facts;
import runtrue.rules.cel.SubjectKind;
import runtrue.rules.judge.subject.Stretch;
import runtrue.rules.judge.subject.Subject;

class SpanGroupsTest {
    /** A span from {@code v} up that starts at {@code u} across, 1 m wide, measured as long as stated. */
    private static Judged span(
            SpanKind kind, int lower, int upper, double u, double v, double length, Outcome outcome) {
        Interval along = new Interval(v, v + length);
        Stretch stretch = new Stretch(kind, lower, upper, new Interval(u, u + 1), along, new Interval(0, 30));
        String name = Stretch.name(List.of(stretch)) + " of plane south";
        Subject subject = new Subject(
                SubjectKind.SPAN,
                name,
                "P-1",
                List.of(
                        TestRoofs.element("p" + lower, "IfcMember", ""),
                        TestRoofs.element("p" + upper, "IfcMember", "")),
                Optional.of(Vector3D.of(u, v, 0)),
                kind + "|" + lower + "|" + upper + "|" + u,
                Facts.empty());
        Quantity measured = new Quantity(length, "mm");
        Quantity margin = new Quantity(1 - length, "mm");
        return new Judged(
                subject.over(stretch),
                new Verdict(
                        outcome,
                        Optional.of(measured),
                        Optional.of(measured),
                        Optional.of(margin),
                        Optional.empty(),
                        "table",
                        ""));
    }

    private static Judged overhang(int line, double u, double v, double length) {
        return span(SpanKind.RIDGE_OVERHANG, line, 0, u, v, length, Outcome.DOES_NOT_CONFORM);
    }

    private static Judged bay(int lower, double u, double v, double length, Outcome outcome) {
        return span(SpanKind.INTERNAL_SPAN, lower, lower + 1, u, v, length, outcome);
    }

    private static List<String> names(List<Judged> judged) {
        return Groups.of(judged).stream().map(Group::name).toList();
    }

    /** A hip that climbs 1 m a metre: each line's overhang starts where the one below ends, and overlaps it in height. */
    private static List<Judged> alongAHip() {
        return List.of(overhang(1, 0, 0.25, 1.154), overhang(2, 1, 1.35, 1.404), overhang(3, 2, 2.7, 1.404));
    }

    @Test
    void overhangs_along_one_hip_are_one_finding_with_the_worst_as_its_measure() {
        Group hip = Groups.of(alongAHip()).get(0);
        assertThat(names(alongAHip()))
                .containsExactly(
                        "the ridge overhangs above support lines 1 to 3 of plane south, from 0.0 to 3.0 m across the fall");
        assertThat(hip.worst().verdict().measured().orElseThrow().si()).isEqualTo(1.404);
        assertThat(hip.varies()).isTrue();
        assertThat(hip.elements()).extracting(e -> e.globalId()).contains("p1", "p2", "p3");
    }

    @Test
    void eave_overhangs_at_both_ends_of_an_arc_are_named_by_the_lines_they_reach_past() {
        Interval width = new Interval(0, 12);
        Stretch below = new Stretch(SpanKind.EAVE_OVERHANG, 0, 1, width, new Interval(0, 0.4), width);
        Stretch above = new Stretch(SpanKind.EAVE_OVERHANG, 6, 0, width, new Interval(9, 9.4), width);
        assertThat(Stretch.name(List.of(above))).isEqualTo("the eave overhang above support line 6");
        assertThat(Stretch.name(List.of(below, above)))
                .isEqualTo("the eave overhangs below support line 1 and above support line 6");
    }

    @Test
    void overhangs_along_two_hips_are_two_findings() {
        List<Judged> both = new ArrayList<>(alongAHip());
        both.add(overhang(1, 20, 0.25, 1.154));
        assertThat(names(both))
                .hasSize(2)
                .contains(
                        "the ridge overhang above support line 1 of plane south, from 20.0 to 21.0 m across the fall");
    }

    @Test
    void wide_bays_apart_from_each_other_stay_apart() {
        assertThat(names(List.of(
                        bay(4, 12, 4, 2.7, Outcome.DOES_NOT_CONFORM), bay(4, 24, 4, 2.7, Outcome.DOES_NOT_CONFORM))))
                .hasSize(2);
    }

    @Test
    void spans_that_are_all_as_wide_and_follow_each_other_are_one_finding() {
        assertThat(names(List.of(bay(2, 0, 1, 2, Outcome.DOES_NOT_CONFORM), bay(3, 0, 3, 2, Outcome.DOES_NOT_CONFORM))))
                .containsExactly(
                        "the internal spans between support lines 2 to 4 of plane south, from 0.0 to 1.0 m across the fall");
    }

    @Test
    void a_wider_bay_among_wide_ones_stays_its_own_finding() {
        assertThat(names(List.of(
                        bay(2, 0, 1, 2, Outcome.DOES_NOT_CONFORM), bay(3, 0, 3, 2.7, Outcome.DOES_NOT_CONFORM))))
                .containsExactly(
                        "the internal span between support lines 2 and 3 of plane south, from 0.0 to 1.0 m across the fall",
                        "the internal span between support lines 3 and 4 of plane south, from 0.0 to 1.0 m across the fall");
    }

    @Test
    void what_conforms_is_told_once_for_each_value_wherever_it_lies() {
        assertThat(names(List.of(
                        bay(2, 0, 1, 1.35, Outcome.CONFORMS),
                        bay(3, 0, 2.35, 1.35, Outcome.CONFORMS),
                        bay(7, 0, 9, 1.35, Outcome.CONFORMS),
                        bay(8, 0, 10.35, 1.2, Outcome.CONFORMS))))
                .containsExactly(
                        "the internal spans between support lines 2 to 4, 7 and 8 of plane south",
                        "the internal span between support lines 8 and 9 of plane south");
    }

    @Test
    void different_outcomes_are_never_put_together() {
        assertThat(names(List.of(bay(2, 0, 1, 2, Outcome.DOES_NOT_CONFORM), bay(3, 0, 3, 2, Outcome.CONFORMS))))
                .hasSize(2);
    }

    @Test
    void the_worst_is_the_same_in_whatever_order_the_spans_come() {
        List<Judged> backwards = new ArrayList<>(alongAHip());
        Collections.reverse(backwards);
        String key = Groups.of(alongAHip()).get(0).worst().subject().key();
        assertThat(Groups.of(backwards).get(0).worst().subject().key()).isEqualTo(key);
    }
}
