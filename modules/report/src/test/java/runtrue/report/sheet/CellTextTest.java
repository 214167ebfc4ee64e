package runtrue.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellTextTest {
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "  =1", "\n=1", "\uFF1D1"})
    void whatCouldComeAliveIsSeen(String text) {
        assertThat(CellText.looksLive(text)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Roof slab", "1-2", "a=b", "'=1"})
    void plainTextIsLeftAlone(String text) {
        assertThat(CellText.looksLive(text)).isFalse();
        assertThat(CellText.clean(text)).isEqualTo(text);
    }

    @Test
    void charactersThatXmlForbidsAndControlsAreTakenOut() {
        assertThat(CellText.clean("a\u0000b\u0007c\uFFFEd\uD800e\u007Ff\u0085g"))
                .isEqualTo("abcdefg");
    }

    @Test
    void lineEndsBecomeLineFeedsAndTabsBlanks() {
        assertThat(CellText.clean("a\r\nb\rc\td")).isEqualTo("a\nb\nc d");
    }

    @Test
    void marksThatTurnTheDirectionOfReadingAreTakenOut() {
        assertThat(CellText.clean("roof\u202Exslx.\u2066exe")).isEqualTo("roofxslx.exe");
    }

    @Test
    void lettersOfAllTonguesStay() {
        assertThat(CellText.clean("Dach Süd 屋根 🏠")).isEqualTo("Dach Süd 屋根 🏠");
    }

    @Test
    void codesThatSpreadsheetProgramsDecodeAreEscaped() {
        assertThat(CellText.clean("_x003D_1")).isEqualTo("_x005F_x003D_1");
        assertThat(CellText.clean("axis_x1_y2")).isEqualTo("axis_x1_y2");
    }

    @Test
    void aTextLongerThanACellIsCutWithAMark() {
        String clean = CellText.clean("ä".repeat(40_000));
        assertThat(clean).hasSize(CellText.LONGEST).endsWith("[cut]");
    }

    @Test
    void theCutNeverSplitsACharacter() {
        String clean = CellText.clean("x" + "🏠".repeat(20_000));
        assertThat(clean.codePoints()).noneMatch(c -> c >= 0xD800 && c <= 0xDFFF);
    }

    @Property
    void cleanTextIsAlwaysLegalAndNeverTooLong(@ForAll String text) {
        String clean = CellText.clean(text);
        assertThat(clean.length()).isLessThanOrEqualTo(CellText.LONGEST);
        assertThat(clean.codePoints()).allMatch(c -> c == '\n' || (c >= ' ' && c != 0xFFFE && c != 0xFFFF));
    }
}
