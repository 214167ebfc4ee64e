package runtrue.result;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasureTest {
    @ParameterizedTest
    @CsvSource({
        "7.999999, mm, 8 mm",
        "1.282742, kN, 1.283 kN",
        "1, deg, 1°",
        "2.25, m2, 2.25 m²",
        "0.0000117, 1/K, 0.0000117 1/K",
        "-0.25, l/s, -0.25 l/s",
        "0, 1, 0",
        "75.071, m, 75.071 m"
    })
    void a_number_is_rounded_to_what_counts(double value, String unit, String words) {
        assertThat(new Measure(value, unit).words()).isEqualTo(words);
    }

    @ParameterizedTest
    @CsvSource({"1999.9999, 2000, 1999.9999 mm", "7.999999, 2, 8 mm", "2000, 2000, 2000 mm"})
    void beside_its_limit_a_difference_is_never_rounded_away(double value, double limit, String words) {
        assertThat(new Measure(value, "mm").words(Optional.of(new Measure(limit, "mm"))))
                .isEqualTo(words);
    }
}
