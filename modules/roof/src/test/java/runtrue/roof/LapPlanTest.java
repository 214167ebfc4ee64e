package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import runtrue.roof.sheet.LapPlan;

class LapPlanTest {
    private static Interval sheet(double length) {
        return new Interval(0, length);
    }

    private static List<SupportLine> every(double spacing, double to) {
        List<SupportLine> lines = new ArrayList<>();
        for (double v = spacing / 2; v < to; v += spacing) {
            lines.add(new SupportLine("L" + v, lines.size() + 1, v, List.of(), List.of()));
        }
        return lines;
    }

    /** Lines at 1, 3, 5 ... 59 on a run of 60: two pieces of at most 40 meet on the line at 29 or 31; 0.2 of lap. */
    @Test
    void a_run_is_halved_on_the_line_nearest_its_middle() {
        assertThat(LapPlan.of(sheet(60), every(2, 60), 40, 0.2)).hasValueSatisfying(plan -> {
            assertThat(plan.lines()).containsExactly(15);
            assertThat(plan.pieces()).containsExactly(29.2, 31.0);
        });
    }

    @Test
    void there_is_no_plan_where_supports_stand_farther_apart_than_a_piece_may_be_long() {
        assertThat(LapPlan.of(sheet(60), every(20, 60), 12, 0.2)).isEmpty();
        assertThat(LapPlan.of(sheet(60), List.of(), 40, 0.2)).isEmpty();
    }

    @Property(tries = 300)
    void pieces_are_short_enough_and_cover_the_run(
            @ForAll @DoubleRange(min = 10, max = 120) double run,
            @ForAll @DoubleRange(min = 0.8, max = 3) double spacing,
            @ForAll @DoubleRange(min = 6, max = 60) double most) {
        double lap = 0.25;
        LapPlan.of(sheet(run), every(spacing, run), most, lap).ifPresent(plan -> {
            assertThat(plan.pieces()).hasSize(plan.lines().size() + 1).allMatch(p -> p <= most + 1e-9);
            double covered = plan.pieces().stream().mapToDouble(p -> p).sum()
                    - lap * plan.lines().size();
            assertThat(covered).isCloseTo(run, within(1e-9));
        });
        // With supports this close there is a plan whenever the pieces may be a few spacings long.
        if (most > 4 * spacing + lap) {
            assertThat(LapPlan.of(sheet(run), every(spacing, run), most, lap)).isPresent();
        }
    }
}
