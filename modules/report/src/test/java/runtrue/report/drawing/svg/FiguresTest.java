package runtrue.report.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {
    @ParameterizedTest
    @CsvSource({
        "12.421, 2, 12.42",
        "0.005, 2, 0.01",
        "-0.004, 2, 0.00",
        "-1.25, 1, -1.2",
        "7, 0, 7",
        "1234567.8, 1, 1234567.8"
    })
    void figuresHaveTheDecimalsAskedFor(double value, int decimals, String text) {
        assertThat(Figures.fixed(value, decimals)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"12.00, 12", "12.50, 12.5", "-0.001, 0", "0.25, 0.25", "100, 100"})
    void positionsAreAsShortAsTheyCanBe(double value, String text) {
        assertThat(Figures.position(value)).isEqualTo(text);
    }
}
