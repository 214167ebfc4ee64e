package runtrue.report.xml;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class LegalTextTest {
    /** U+20000 takes two units of UTF-16. */
    private static final String LETTER = "\uD840\uDC00";

    @Test
    void what_fits_stays() {
        assertThat(LegalText.shortened("abc" + LETTER, 5)).isEqualTo("abc" + LETTER);
    }

    @Test
    void what_is_too_long_is_cut_between_letters() {
        assertThat(LegalText.shortened("abcdef", 4)).isEqualTo("abc…");
        assertThat(LegalText.shortened("ab" + LETTER + "cd", 4)).isEqualTo("ab…");
        assertThat(LegalText.shortened("a" + LETTER + "cde", 4)).isEqualTo("a" + LETTER + "…");
    }
}
