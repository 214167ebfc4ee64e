package runtrue.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {
    @ParameterizedTest
    @CsvSource({
        "1., 1",
        "-.5, -0.5",
        ".5, 0.5",
        "1.E-3, 0.001",
        "1E5, 100000",
        "1e5, 100000",
        "+3.0, 3",
        "-0., -0.0",
        "0.1, 0.1",
        "123456789012345678., 123456789012345678",
        "9007199254740993., 9007199254740993",
        "1.7976931348623157E308, 1.7976931348623157E308",
        "4.9E-324, 4.9E-324",
        "1.E-400, 0",
        "0.000000000000000000000000000001, 1E-30",
        "1.0000000000000000000000000000001, 1",
    })
    void readsReals(String written, double value) {
        assertThat(Text21.value(written)).isEqualTo(new StepValue.Real(value));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "+3, 3", "-7, -7", "007, 7", "9223372036854775807, 9223372036854775807"})
    void readsWholeNumbers(String written, long value) {
        assertThat(Text21.value(written)).isEqualTo(new StepValue.Whole(value));
    }

    /** The decimal text of a double, read by the JDK, is the judge. */
    @Property
    void agreesWithTheLibraryToTheLastBit(@ForAll double value) {
        String written = Double.toString(value);
        StepFile file = Text21.openRecords("#1=A((" + written + "));");

        assertThat(file.numbers(1, 0)).containsExactly(Double.parseDouble(written));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "-nan(ind)",
                "1.#QNAN",
                "-1.#IND",
                "INF",
                "1.2.3",
                "1.E",
                "1.E+",
                "-",
                "+",
                "1,5E",
                "0x10",
                "1.D5",
                "1E999",
                "--1",
                "99999999999999999999",
                "1-2"
            })
    void refusesWhatIsNoNumber(String written) {
        StepFile file = Text21.openRecords("\n#12=A(1,\n" + written + ");");

        assertThatThrownBy(() -> file.instance(12))
                .isInstanceOf(StepException.class)
                .hasMessageStartingWith("model.ifc, line 7, #12 A: ");
    }
}
