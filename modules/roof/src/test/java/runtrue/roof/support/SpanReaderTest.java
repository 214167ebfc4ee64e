package runtrue.roof.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import runtrue.roof.Interval;
import runtrue.roof.Span;
import runtrue.roof.SpanKind;
import runtrue.roof.Stretch;
import runtrue.roof.Stretch.Crossing;
import runtrue.roof.Stretch.Ends;

/** Stretches set down by hand; the widest verge overhang is half a metre, as one sheet is wide. */
class SpanReaderTest {
    private static Stretch bare(double from, double to, double low, double high) {
        return new Stretch(new Interval(from, to), new Ends(low, low), new Ends(high, high), List.of());
    }

    private static Stretch supported(double from, double to) {
        return new Stretch(
                new Interval(from, to), new Ends(0, 0), new Ends(4, 4), List.of(new Crossing("S1", new Ends(2, 2))));
    }

    private static List<Span> unsupported(Stretch... stretches) {
        return SpanReader.of(List.of(stretches), 0.5, 0.06).stream()
                .filter(s -> s.lower().isEmpty() && s.upper().isEmpty())
                .toList();
    }

    @Test
    void narrow_neighbours_without_support_are_one_span_from_edge_to_edge() {
        assertThat(unsupported(supported(0, 3), bare(3, 3.3, 0, 4), bare(3.3, 3.6, 0, 4.5), bare(3.6, 3.9, 0, 4.2)))
                .singleElement()
                .satisfies(s -> {
                    assertThat(s.kind()).isEqualTo(SpanKind.END_SPAN);
                    assertThat(s.u()).isEqualTo(new Interval(3, 3.9));
                    assertThat(s.length()).isCloseTo(4.5, within(1e-12));
                    assertThat(s.least()).isCloseTo(4, within(1e-12));
                    assertThat(s.v()).isEqualTo(new Interval(0, 4.5));
                });
    }

    @Test
    void a_verge_overhang_in_several_stretches_carries_no_span() {
        assertThat(unsupported(bare(0, 0.2, 0, 4), bare(0.2, 0.4, 0, 3), supported(0.4, 3)))
                .isEmpty();
    }

    @Test
    void narrow_stretches_at_both_verges_are_not_one() {
        assertThat(unsupported(bare(0, 0.4, 0, 4), supported(0.4, 3), bare(3, 3.4, 0, 4)))
                .isEmpty();
    }

    @Test
    void narrow_stretches_that_do_not_touch_along_the_fall_are_not_one() {
        assertThat(unsupported(bare(0, 0.4, 0, 1), bare(0.4, 0.8, 3, 4))).isEmpty();
    }

    private static Stretch bay(double from, double to, String... lines) {
        List<Crossing> crossings = new ArrayList<>();
        for (String line : lines) {
            double v = Double.parseDouble(line.substring(1));
            crossings.add(new Crossing(line, new Ends(v, v)));
        }
        return new Stretch(new Interval(from, to), new Ends(0, 0), new Ends(9, 9), crossings);
    }

    private static List<Span> betweenSupports(double gap) {
        return SpanReader.of(
                        List.of(
                                bay(0, 6, "S1", "S3", "S5", "S8"),
                                bay(6, 6 + gap, "S1", "S8"),
                                bay(6 + gap, 12, "S1", "S4", "S8")),
                        0.5,
                        0.06)
                .stream()
                .filter(s -> s.kind() == SpanKind.END_SPAN || s.kind() == SpanKind.INTERNAL_SPAN)
                .toList();
    }

    @Test
    void a_slot_between_the_ends_of_supports_carries_no_span() {
        assertThat(betweenSupports(0.01)).extracting(Span::length).containsExactly(2.0, 2.0, 3.0, 3.0, 4.0);
    }

    @Test
    void a_gap_wider_than_a_butt_joint_carries_a_span_from_the_last_support_to_the_next() {
        assertThat(betweenSupports(0.06)).extracting(Span::length).contains(7.0);
    }

    @Test
    void overhangs_go_on_across_a_slot() {
        assertThat(SpanReader.of(
                        List.of(bay(0, 6, "S1", "S3"), bay(6, 6.01, "S1"), bay(6.01, 12, "S1", "S4")), 0.5, 0.06))
                .filteredOn(s -> s.kind() == SpanKind.EAVE_OVERHANG)
                .singleElement()
                .satisfies(s -> assertThat(s.u()).isEqualTo(new Interval(0, 12)));
    }
}
