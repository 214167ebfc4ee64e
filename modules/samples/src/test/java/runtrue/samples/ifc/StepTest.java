package runtrue.samples.ifc;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Forms of ISO 10303-21 (from memory): a real has a point, strings double the apostrophe, \X2\ holds UTF-16. */
class StepTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0.",
        "-0.0, 0.",
        "1e-17, 0.",
        "12, 12.",
        "-3, -3.",
        "0.1, 0.1",
        "120.3, 120.3",
        "36300, 36300.",
        "1e-5, 0.00001",
        "0.017453292519943295, 0.017453292519943"
    })
    void reals_have_a_point_and_no_exponent(double value, String text) {
        assertThat(Step.text(value)).isEqualTo(text);
    }

    @Property
    void reals_come_back_to_within_their_last_digit(@ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
        double back = Double.parseDouble(Step.text(value) + "0");
        assertThat(Math.abs(back - value)).isLessThanOrEqualTo(Math.max(1e-15, Math.abs(value) * 1e-14));
    }

    @Test
    void reals_do_not_follow_the_default_locale() {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.GERMANY);
        try {
            assertThat(Step.text(1234.5)).isEqualTo("1234.5");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void strings_double_apostrophes_and_backslashes() {
        assertThat(Step.text("0' 6\" \\")).isEqualTo("'0'' 6\" \\\\'");
    }

    @Test
    void strings_encode_letters_beyond_ascii() {
        assertThat(Step.text("5° ä")).isEqualTo("'5\\X2\\00B0\\X0\\ \\X2\\00E4\\X0\\'");
    }

    @Test
    void lists_and_typed_values_nest() {
        Object value = List.of(new StepRef(7), new Step.Typed("IFCLABEL", "a"), List.of(1, true), Step.UNSET);
        assertThat(Step.text(value)).isEqualTo("(#7,IFCLABEL('a'),(1,.T.),$)");
    }

    @Test
    void other_kinds_of_value_are_refused() {
        assertThatIllegalArgumentException().isThrownBy(() -> Step.text(1.5f));
    }
}
