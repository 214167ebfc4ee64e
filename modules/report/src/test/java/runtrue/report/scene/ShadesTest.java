package runtrue.report.scene;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ShadesTest {
    private static final int PIXELS = 4096;

    @Test
    void few_colours_stay_as_they_are() {
        int[] before = new Random(1).ints(PIXELS, 0, 256).map(i -> i * 65_793).toArray();
        int[] after = before.clone();
        Shades.join(after);
        assertThat(after).isEqualTo(before);
    }

    @Test
    void more_shades_than_a_palette_holds_are_brought_together_and_stay_near() {
        int[] before = new Random(2).ints(PIXELS, 0, 1000).map(i -> i * 64).toArray();
        int[] after = before.clone();
        Shades.join(after);
        assertThat(Arrays.stream(after).distinct().count()).isLessThanOrEqualTo(256);
        for (int i = 0; i < PIXELS; i++) {
            for (int shift = 0; shift < 24; shift += 8) {
                assertThat(((after[i] >> shift) & 0xFF) - ((before[i] >> shift) & 0xFF))
                        .isBetween(-15, 15);
            }
        }
    }

    @Test
    void a_photograph_is_left_alone() {
        int[] before = new Random(3).ints(PIXELS, 0, 1 << 24).toArray();
        int[] after = before.clone();
        Shades.join(after);
        assertThat(after).isEqualTo(before);
    }
}
