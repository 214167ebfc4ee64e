package runtrue.report.drawing.svg;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TextWidthTest {
    /** Advance widths of Helvetica, Adobe's published font metrics (Core 14 AFM; from memory), thousandths of the size. */
    @ParameterizedTest
    @CsvSource({"0123456789, 5560", "eave, 2168", "ridge, 2111", "Hall, 1724", "mm, 1666", "iiii, 888"})
    void isNeverLessThanTheCommonFace(String text, double thousandths) {
        assertThat(TextWidth.of(text)).isGreaterThanOrEqualTo(thousandths / 1000);
    }

    @Property(tries = 200)
    void linesAreNoWiderThanAskedAndLoseNothing(
            @ForAll @StringLength(max = 80) String text, @ForAll @DoubleRange(min = 3, max = 30) double width) {
        List<String> lines = TextWidth.wrap(text, width);
        assertThat(lines).allMatch(l -> TextWidth.of(l) <= width);
        assertThat(String.join("", lines).replaceAll("\\s", ""))
                .isEqualTo(text.strip().replaceAll("\\s", ""));
    }

    /** Six letters of 1.05 are wider than 6.3 by the last digit of a double. */
    @Test
    void aLineThatIsTooWideByRoundingIsBroken() {
        List<String> lines = TextWidth.wrap("\u0500".repeat(6), 6.3);
        assertThat(lines).doesNotContain("").allMatch(l -> TextWidth.of(l) <= 6.3);
    }

    @Test
    void whatIsCutSaysSo() {
        assertThat(TextWidth.cut("architecture", 5)).endsWith("…").hasSizeLessThan(9);
        assertThat(TextWidth.cut("roof", 5)).isEqualTo("roof");
    }
}
