package runtrue.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CuttingTest {
    private static final Stock ROLL = new Stock(5600, 0, 0);

    /** By hand: of 7 pieces above half a bar none shares one; total length alone would allow 5 bars. */
    @Test
    void long_pieces_that_share_no_bar_prove_the_count() {
        CuttingPlan plan = Cutting.of(new Stock(10, 0, 0), List.of(new Piece(6, 7), new Piece(4, 1)));
        assertThat(plan.bars()).isEqualTo(7);
        assertThat(plan.bound()).isEqualTo(CuttingPlan.Bound.LONG_PIECES);
    }

    /** By hand: two pieces of 4 go into a bar of 10, so that five need 3 bars; length alone allows 2. */
    @Test
    void how_many_go_into_a_bar_proves_what_length_cannot() {
        CuttingPlan plan = Cutting.of(new Stock(10, 0, 0), List.of(new Piece(4, 5)));
        assertThat(plan.bars()).isEqualTo(3);
        assertThat(plan.bound()).isEqualTo(CuttingPlan.Bound.COUNT);
        assertThat(plan.proved()).isTrue();
    }

    /** By hand: 45 + 35 + 20 fills a bar of 100, twice. First fit cuts 45 + 45, then 35 + 35 + 20, and has 20 left. */
    @Test
    void the_programme_finds_the_bars_that_first_fit_misses() {
        List<Piece> pieces = List.of(new Piece(45, 2), new Piece(35, 2), new Piece(20, 2));
        CuttingPlan plan = Cutting.of(new Stock(100, 0, 0), pieces);
        assertThat(plan.bars()).isEqualTo(2);
        assertThat(plan.patterns())
                .containsExactly(new Pattern(List.of(new Piece(45, 1), new Piece(35, 1), new Piece(20, 1)), 2, 0));
        assertThat(plan.proved()).isTrue();
    }

    @Test
    void a_plan_that_the_clock_cuts_short_says_so_and_is_still_a_plan() {
        List<Piece> pieces = List.of(new Piece(45, 2), new Piece(35, 2), new Piece(20, 2));
        long[] clock = {0};
        Limits second = new Limits(10, 10, Duration.ofSeconds(1));
        CuttingPlan plan = Cutting.of(new Stock(100, 0, 0), pieces, second, () -> clock[0] += 2_000_000_000L);
        assertThat(plan.bars()).isEqualTo(3);
        assertThat(plan.lowerBound()).isEqualTo(2);
        assertThat(plan.cutShort()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"0, 2000, 2, 0", "5, 2000, 3, 1990", "5, 1995, 2, 0", "5, 1000, 2, 975"})
    void a_kerf_is_lost_between_pieces_but_not_at_the_end_of_the_bar(int kerf, int length, int bars, int rest) {
        CuttingPlan plan = Cutting.of(new Stock(6000, kerf, 0), List.of(new Piece(length, 6)));
        assertThat(plan.bars()).isEqualTo(bars);
        assertThat(plan.patterns().get(0).rest()).isEqualTo(rest);
    }

    @Test
    void short_rests_are_waste_and_long_ones_are_kept() {
        CuttingPlan plan = Cutting.of(new Stock(3000, 0, 500), List.of(new Piece(2800, 1), new Piece(2400, 1)));
        assertThat(plan.waste()).isEqualTo(200);
        assertThat(plan.kept()).isEqualTo(600);
    }

    /** 300 pieces of 40 lengths, invented; the plan may need one bar more than is proved. */
    @Test
    void three_hundred_pieces_come_within_one_bar_of_the_bound() {
        Random random = new Random(7);
        int[] lengths = random.ints(40, 300, 4000).toArray();
        List<Piece> pieces =
                random.ints(300, 0, 40).mapToObj(i -> new Piece(lengths[i], 1)).toList();
        CuttingPlan plan = Cutting.of(new Stock(6000, 4, 300), pieces);
        assertThat(plan.bars() - plan.lowerBound()).isBetween(0, 1);
    }

    @Test
    void a_piece_that_is_longer_than_the_stock_is_refused() {
        assertThatThrownBy(() -> Cutting.of(ROLL, List.of(new Piece(5601, 1))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("5601 mm");
    }

    @Property(tries = 150)
    void every_piece_is_cut_once_and_no_bar_is_overfilled(
            @ForAll @Size(min = 1, max = 60) List<@IntRange(min = 50, max = 3000) Integer> lengths,
            @ForAll @IntRange(min = 0, max = 6) int kerf) {
        List<Piece> pieces = lengths.stream().map(l -> new Piece(l, 1)).toList();
        CuttingPlan plan = Cutting.of(new Stock(3000, kerf, 300), pieces);
        Map<Integer, Integer> cut = new TreeMap<>();
        for (Pattern pattern : plan.patterns()) {
            int used = -kerf;
            for (Piece piece : pattern.pieces()) {
                used += piece.count() * (piece.length() + kerf);
                cut.merge(piece.length(), piece.count() * pattern.times(), Integer::sum);
            }
            assertThat(used).isLessThanOrEqualTo(3000);
        }
        Map<Integer, Integer> wanted = new TreeMap<>();
        lengths.forEach(l -> wanted.merge(l, 1, Integer::sum));
        assertThat(cut).isEqualTo(wanted);
        assertThat(plan.bars()).isBetween(plan.lowerBound(), lengths.size());
        List<Piece> reversed = new ArrayList<>(pieces);
        Collections.reverse(reversed);
        assertThat(Cutting.of(new Stock(3000, kerf, 300), reversed)).isEqualTo(plan);
    }

    /** The bound against all plans there are: each piece in each bar, of few pieces. */
    @Property(tries = 200)
    void the_bound_never_lies_above_the_best_of_all_plans(
            @ForAll @Size(min = 1, max = 8) List<@IntRange(min = 1, max = 20) Integer> lengths) {
        CuttingPlan plan = Cutting.of(
                new Stock(20, 0, 0), lengths.stream().map(l -> new Piece(l, 1)).toList());
        int best = fewest(lengths, 0, new int[lengths.size()], 0);
        assertThat(plan.lowerBound()).isLessThanOrEqualTo(best);
        assertThat(plan.bars()).isGreaterThanOrEqualTo(best);
    }

    private static int fewest(List<Integer> lengths, int next, int[] used, int bars) {
        if (next == lengths.size()) {
            return bars;
        }
        int best = Integer.MAX_VALUE;
        for (int b = 0; b <= Math.min(bars, lengths.size() - 1); b++) {
            if (used[b] + lengths.get(next) <= 20) {
                used[b] += lengths.get(next);
                best = Math.min(best, fewest(lengths, next + 1, used, Math.max(bars, b + 1)));
                used[b] -= lengths.get(next);
            }
        }
        return best;
    }
}
