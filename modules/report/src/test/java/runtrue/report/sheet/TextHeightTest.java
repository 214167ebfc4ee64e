package runtrue.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextHeightTest {
    private static final float LINE = 13.5f;

    @ParameterizedTest
    @CsvSource({
        "'', 10, 1",
        "0123456789, 11, 1",
        "0123456789, 5, 3",
        "'0123 5678', 5, 2",
        "'illicit lilliputian tills', 18, 1",
        "WWWWWWWW, 10, 2"
    })
    void wholeWordsAreWrappedAndWideLettersCountForMore(String text, int width, int lines) {
        assertThat(TextHeight.points(text, width)).isEqualTo(lines * LINE);
    }

    @ParameterizedTest
    @CsvSource({"1", "3"})
    void linesOfTheTextAddUp(int lines) {
        assertThat(TextHeight.points("a\n".repeat(lines), 10)).isEqualTo(lines * LINE);
    }
}
