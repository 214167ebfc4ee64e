package runtrue.rules.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.rules.Quantity;

class QuantitiesTest {
    /** Inch, foot and pound-force are exact by definition; 1 psf = 47.88026 Pa (NIST SP 811). */
    @ParameterizedTest
    @CsvSource({
        "1200 mm, 1.2",
        "12 in, 0.3048",
        "1 ft, 0.3048",
        "2 deg, 0.03490658503988659",
        "2°, 0.03490658503988659",
        "12e-6 1/K, 0.000012",
        "2 %, 0.02",
        "16 psf, 766.08416",
        "1.2 kPa, 1200",
        "1.2 kN/m2, 1200",
        "3 pcs, 3",
        ".5 m, 0.5",
        "-10 mm, -0.01"
    })
    void quantities_are_read_in_si(String text, double si) {
        assertThat(Quantities.parse(text).si()).isCloseTo(si, within(Math.abs(si) * 1e-7));
    }

    /** Slopes of IBC section 1507.4.2: 1/4:12 is 2.083 % and 1.19 degrees, 1/2:12 2.39, 3:12 14.04. */
    @ParameterizedTest
    @CsvSource({"0.25, 2.083, 1.19", "0.5, 4.167, 2.39", "3, 25, 14.04"})
    void slopes_in_inches_per_foot_convert(double rise, double percent, double degrees) {
        double slope =
                Quantities.parse(rise + " in").si() / Quantities.parse("12 in").si();
        assertThat(slope).isCloseTo(Quantities.parse(percent + " %").si(), within(5e-6));
        assertThat(Math.atan(slope))
                .isCloseTo(Quantities.parse(degrees + " deg").si(), within(Math.toRadians(0.005)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1200", "1200 mn", "mm", "", "1,2 m", "1 2 m", "twelve mm"})
    void anything_else_is_refused(String text) {
        assertThatThrownBy(() -> Quantities.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void an_unknown_unit_is_refused_with_the_list() {
        assertThatThrownBy(() -> Quantities.parse("2 mn"))
                .hasMessageStartingWith("unknown unit \"mn\"; known units: mm, cm, m, in, ft,");
    }

    @Test
    void another_dimension_is_refused() {
        assertThatThrownBy(() -> Quantities.parse("2 deg", Dimension.LENGTH))
                .hasMessage("\"2 deg\" is of dimension angle; wanted is length");
    }

    @ParameterizedTest
    @CsvSource({
        "1.8, mm, 1800 mm",
        "0.0006, mm, 0.6 mm",
        "0.024960, deg, 1.43 deg",
        "1281.1, kN, 1.281 kN",
        "12.3456, m, 12.346 m",
        "0, m, 0 m",
        "0.000012, 1/K, 0.000012 1/K",
        "3, 1, 3"
    })
    void quantities_are_written_for_people(double si, String unit, String text) {
        assertThat(Quantities.text(new Quantity(si, unit))).isEqualTo(text);
    }

    @Test
    void two_that_differ_are_written_so_that_they_differ() {
        Quantity limit = new Quantity(Math.toRadians(2), "deg");
        Quantity less = new Quantity(Math.toRadians(1.99998), "deg");
        assertThat(Quantities.text(less, limit)).isEqualTo("1.99998 deg");
    }

    @Test
    void writing_does_not_follow_the_locale_of_the_machine() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Quantities.text(new Quantity(1.2345, "m"))).isEqualTo("1.234 m");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Property(tries = 200)
    void what_is_written_reads_back(@ForAll @DoubleRange(min = 0.01, max = 10_000) double metres) {
        String text = Quantities.text(new Quantity(metres, "mm"));
        assertThat(Quantities.parse(text).si()).isCloseTo(metres, within(0.00005 + metres * 1e-9));
    }
}
