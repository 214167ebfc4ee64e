package runtrue.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SheetPiecesTest {
    private static List<Double> every(double spacing, double run) {
        return DoubleStream.iterate(spacing, v -> v < run, v -> v + spacing)
                .boxed()
                .toList();
    }

    /**
     * Supports every 1.5 m, 12 m at most, 25 m of run: to 10.5 + 0.05. From 10.45 two are enough; their middle is 17.725, nearest
     * to it 18: to 18.05, and from 17.95 to the end.
     */
    @Test
    void laps_lie_over_the_farthest_support_that_a_sheet_reaches_and_the_last_two_are_about_alike() {
        SheetPieces pieces = SheetPieces.of(25, every(1.5, 25), 0.1, 12);
        assertThat(pieces.onSupports()).isTrue();
        assertThat(lengths(pieces))
                .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1)
                .containsExactly(10.55, 7.6, 7.05);
        assertThat(pieces.pieces().get(0).share()).isCloseTo(10.5 / 25, within(1e-9));
    }

    /** (25 - 0.1) / 11.9 = 2.09: three of (25 + 0.2) / 3 = 8.4. */
    @Test
    void sheets_are_alike_where_supports_are_too_far_apart() {
        SheetPieces pieces = SheetPieces.of(25, List.of(3.0, 20.0), 0.1, 12);
        assertThat(pieces.onSupports()).isFalse();
        assertThat(lengths(pieces)).hasSize(3).allSatisfy(l -> assertThat(l).isCloseTo(8.4, within(1e-9)));
    }

    @Property(tries = 200)
    void sheets_cover_the_run_lapped_and_none_is_too_long(
            @ForAll @DoubleRange(min = 0.5, max = 80) double run,
            @ForAll @DoubleRange(min = 0.5, max = 5) double spacing,
            @ForAll @DoubleRange(min = 6, max = 15) double longest) {
        SheetPieces pieces = SheetPieces.of(run, every(spacing, run), 0.15, longest);
        double total = lengths(pieces).stream().mapToDouble(l -> l).sum();
        assertThat(total).isCloseTo(run + 0.15 * (pieces.pieces().size() - 1), within(1e-6));
        assertThat(lengths(pieces)).allMatch(l -> l <= longest + 1e-6 && l > 0);
        assertThat(pieces.pieces().stream()
                        .mapToDouble(SheetPieces.Piece::share)
                        .sum())
                .isCloseTo(1, within(1e-6));
    }

    private static List<Double> lengths(SheetPieces pieces) {
        return pieces.pieces().stream().map(SheetPieces.Piece::length).toList();
    }
}
