package runtrue.cutting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Instances with a known optimum. Those of the OR-Library are by E. Falkenauer, Journal of Heuristics 2 (1996). */
class LiteratureTest {
    /**
     * u120_00, 01, 08 and 19 of the OR-Library's file binpack1: 120 sizes between 20 and 100 into bins of 150, with the number of
     * bins that the file states as best known, typed from a public copy. Two of them stood one higher for years (from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "48, 42 69 67 57 93 90 38 36 45 42 33 79 27 57 44 84 86 92 46 38 85 33 82 73 49 70 59 23 57 72 74 69"
                + " 33 42 28 46 30 64 29 74 41 49 55 98 80 32 25 38 82 30 35 39 57 84 62 50 55 27 30 36 20 78 47 26 45"
                + " 41 58 98 91 96 73 84 37 93 91 43 73 85 81 79 71 80 76 83 41 78 70 23 42 87 43 84 60 55 49 78 73 62"
                + " 36 44 94 69 32 96 70 84 58 78 25 80 58 66 83 24 98 60 42 43 43 39",
        "49, 97 57 81 62 75 81 23 43 50 38 60 58 70 88 36 90 37 45 45 39 44 53 70 24 82 81 47 97 35 65 74 68"
                + " 49 55 52 94 95 29 99 20 22 25 49 46 98 59 98 60 23 72 33 98 80 95 78 57 67 53 47 53 36 38 92 30 80"
                + " 32 97 39 80 72 55 41 60 67 53 65 95 20 66 78 98 47 100 85 53 53 67 27 22 61 43 52 76 64 61 29 30 46"
                + " 79 66 27 79 98 90 22 75 57 67 36 70 99 48 43 45 71 100 88 48 27 39",
        "50, 100 22 25 51 95 58 97 30 79 23 53 80 20 65 64 21 26 100 81 98 70 85 92 97 86 71 91 29 63 34 67"
                + " 23 33 89 94 47 100 37 40 58 73 39 49 79 54 57 98 69 67 49 38 34 96 27 92 82 69 45 69 20 75 97 51 70"
                + " 29 91 98 77 48 45 43 61 36 82 89 94 26 35 58 58 57 46 44 91 49 52 65 42 33 60 37 57 91 52 95 84 72"
                + " 75 89 81 67 74 87 60 32 76 85 59 62 39 64 52 88 45 29 88 85 54 40 57",
        "49, 49 95 38 62 63 97 42 62 100 43 44 77 97 94 68 23 50 36 89 58 97 27 64 65 54 58 24 35 33 63 32 50"
                + " 58 90 44 50 48 21 72 75 21 74 28 95 77 69 96 24 57 85 72 96 50 83 65 62 99 93 23 77 94 31 50 33 79"
                + " 73 23 55 44 78 84 66 31 59 97 95 22 76 90 66 29 100 90 92 50 49 47 43 37 40 60 52 54 99 34 46 88 97"
                + " 85 39 32 51 95 54 99 86 48 90 28 25 86 39 74 26 38 60 41 67 80 33"
    })
    void sizes_of_the_or_library_need_as_few_bins_as_it_states(int bins, String sizes) {
        CuttingPlan plan = Cutting.of(new Stock(150, 0, 0), pieces(sizes));
        assertThat(plan.bars()).isEqualTo(bins);
        assertThat(plan.proved()).isTrue();
    }

    /** t60_00 of the file binpack5 there, from memory: 60 sizes that fill 20 bins of 1000 to the last, three in each. */
    @ParameterizedTest
    @CsvSource({
        "20, 495 474 473 472 466 450 445 444 439 430 419 414 410 395 372 370 366 366 366 363 361 357 355 351 350 350 347 320 315"
                + " 307 303 299 298 298 292 288 287 283 275 275 274 273 273 272 272 271 269 269 268 263 262 261 259 258 255 254"
                + " 252 252 252 251"
    })
    void triples_of_the_or_library_fill_their_bins(int bins, String sizes) {
        CuttingPlan plan = Cutting.of(new Stock(1000, 0, 0), pieces(sizes));
        assertThat(plan.bars()).isEqualTo(bins);
        assertThat(plan.proved()).isTrue();
    }

    /** 13 widths from rolls of 5600 mm, the worked example of encyclopedias and textbooks, optimum 73; from memory. */
    @ParameterizedTest
    @CsvSource({
        "73, 1380 1520 1560 1710 1820 1880 1930 2000 2050 2100 2140 2150 2200, 22 25 12 14 18 18 20 10 12 14 16 18 20"
    })
    void the_textbook_rolls_need_73(int rolls, String widths, String counts) {
        int[] width = numbers(widths);
        int[] count = numbers(counts);
        CuttingPlan plan = Cutting.of(
                new Stock(5600, 0, 0),
                IntStream.range(0, width.length)
                        .mapToObj(i -> new Piece(width[i], count[i]))
                        .toList());
        assertThat(plan.bars()).isEqualTo(rolls);
        assertThat(plan.proved()).isTrue();
    }

    /** Triples that fill 1000 exactly, as in the class t there; the optimum is known because they were made so. */
    @ParameterizedTest
    @CsvSource({"1", "2", "3", "4", "5"})
    void triples_come_within_one_bar_of_what_they_were_made_from(int seed) {
        Random random = new Random(seed);
        StringBuilder sizes = new StringBuilder();
        for (int i = 0; i < 20; i++) {
            int a = 380 + random.nextInt(110);
            int b = 250 + random.nextInt((1000 - a) / 2 - 250);
            sizes.append(a)
                    .append(' ')
                    .append(b)
                    .append(' ')
                    .append(1000 - a - b)
                    .append(' ');
        }
        CuttingPlan plan = Cutting.of(new Stock(1000, 0, 0), pieces(sizes.toString()));
        assertThat(plan.lowerBound()).isEqualTo(20);
        assertThat(plan.bars()).isBetween(20, 21);
    }

    private static List<Piece> pieces(String sizes) {
        return Arrays.stream(numbers(sizes)).mapToObj(s -> new Piece(s, 1)).toList();
    }

    private static int[] numbers(String text) {
        return Arrays.stream(text.trim().split(" ")).mapToInt(Integer::parseInt).toArray();
    }
}
