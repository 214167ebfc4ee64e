package runtrue.step;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** String encoding of ISO 10303-21 clause 6.4.3; expected characters from the code charts of ISO 10646 and ISO 8859. */
class StringEscapesTest {
    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '"',
            value = {
                "plain, plain",
                "it''s, it's",
                "'''', ''",
                "C:\\\\dir, C:\\dir",
                "\\X\\E4, \u00E4",
                "\\X\\e4, \u00E4",
                "\\X2\\00E4\\X0\\che, \u00E4che",
                "\\X2\\00F600DF\\X0\\e, \u00F6\u00DFe",
                "\\X2\\00F6\\X0\\\\X2\\00DF\\X0\\, \u00F6\u00DF",
                "\\X2\\D83DDE00\\X0\\, \uD83D\uDE00",
                "\\X2\\D83D\\X0\\\\X2\\DE00\\X0\\, \uD83D\uDE00",
                "\\X4\\0001F600\\X0\\, \uD83D\uDE00",
                "\\X4\\000000E40001F600\\X0\\x, \u00E4\uD83D\uDE00x",
                "\\S\\D, \u00C4",
                "\\PA\\\\S\\D, \u00C4",
                "\\PB\\\\S\\!, \u0104",
                "\\PE\\\\S\\P\\PA\\\\S\\P, \u0430\u00D0",
                "\\PI\\\\S\\p, \u011F",
                "a\\N\\b, \"a\nb\"",
            })
    void resolves(String written, String text) {
        assertThat(Text21.value("'" + written + "'")).isEqualTo(new StepValue.Text(text));
    }

    @ParameterizedTest
    @CsvSource({
        "C:\\temp",
        "\\X2\\00E\\X0\\",
        "\\X2\\00E4",
        "\\X\\G1",
        "\\X4\\00110000\\X0\\",
        "\\PZ\\",
        "\\S",
        "ends\\",
        "\\x2\\00E4\\x0\\"
    })
    void leavesABackslashThatBeginsNoEscapeAsItIs(String written) {
        assertThat(Text21.value("'" + written + "'")).isEqualTo(new StepValue.Text(written));
    }

    @Test
    void joinsLinesWithinAString() {
        assertThat(Text21.value("'\\X2\\00\r\nE4\\X0\\b\nc'")).isEqualTo(new StepValue.Text("\u00E4bc"));
    }

    @Test
    void readsBytesBeyondAsciiAsUnicodeElseAsLatin() {
        String unicode = new String("\u00E4\u2192".getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);

        assertThat(Text21.value("'" + unicode + "''\\X\\E4'")).isEqualTo(new StepValue.Text("\u00E4\u2192'\u00E4"));
        assertThat(Text21.value("'\u00E4\u00FF'")).isEqualTo(new StepValue.Text("\u00E4\u00FF"));
    }

    @Test
    void quotesInASetOfShiftedCharactersAreDoubledToo() {
        assertThat(Text21.value("'\\S\\''x'")).isEqualTo(new StepValue.Text("\u00A7x"));
    }
}
