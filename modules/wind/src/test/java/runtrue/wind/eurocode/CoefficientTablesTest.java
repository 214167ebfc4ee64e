package runtrue.wind.eurocode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.wind.Certainty;
import runtrue.wind.SharedFiles;
import runtrue.wind.WindException;

/** Tables 7.2 to 7.5 of EN 1991-1-4:2005+A1, against the values read for the reference data. */
class CoefficientTablesTest {
    private final CoefficientTables tables = CoefficientTables.recommended();

    @ParameterizedTest(name = "{2} m2: {3}")
    @CsvSource({
        "-1.8, -2.5, 1, -2.5",
        "-1.8, -2.5, 2, -2.289",
        "-1.8, -2.5, 5, -2.011",
        "-1.8, -2.5, 10, -1.8",
        "-1.8, -2.5, 40, -1.8"
    })
    void coefficients_run_with_the_logarithm_of_the_area(double cpe10, double cpe1, double area, double expected) {
        assertThat(Cpe.byArea(cpe10, cpe1, area)).isCloseTo(expected, within(5e-4));
    }

    @ParameterizedTest
    @CsvSource({
        "en1991-1-4-cpe-monopitch.csv, mono-pitch",
        "en1991-1-4-cpe-duopitch.csv, duo-pitch",
        "en1991-1-4-cpe-hipped.csv, hipped"
    })
    void pitched_roofs_have_the_values_of_the_reference(String file, String form) throws IOException {
        assertThat(SharedFiles.table(file)).isNotEmpty().allSatisfy(row -> {
            String wind = form.equals("hipped") ? "any" : row[1];
            Cpe cpe = tables.find(form, wind, "", Double.parseDouble(row[2]), row[3])
                    .orElseThrow();
            if (cpe.note().isEmpty()) {
                assertThat(Double.parseDouble(row[5])).isIn(cpe.low10(), cpe.high10());
                assertThat(Double.parseDouble(row[6])).isIn(cpe.low1(), cpe.high1());
            } else {
                assertThat(cpe.low10()).isLessThan(Double.parseDouble(row[5]));
            }
        });
    }

    @Test
    void flat_roofs_have_the_values_of_the_reference() throws IOException {
        assertThat(SharedFiles.table("en1991-1-4-cpe-flat.csv")).isNotEmpty().allSatisfy(row -> {
            String kind = row[2].split(" ", 2)[0];
            double at = row[2].contains("=") ? Double.parseDouble(row[2].substring(row[2].indexOf('=') + 1)) : 0;
            Cpe cpe = tables.find("flat", "any", kind, at, row[3]).orElseThrow();
            assertThat(Double.parseDouble(row[5])).isIn(cpe.low10(), cpe.high10());
            assertThat(Double.parseDouble(row[6])).isIn(cpe.low1(), cpe.high1());
        });
    }

    @Test
    void where_sources_disagree_the_worse_value_is_taken_and_said() {
        Cpe cpe = tables.find("hipped", "any", "", 30, "I").orElseThrow();

        assertThat(cpe.low10()).isEqualTo(-0.5);
        assertThat(cpe.note()).contains("-0.4");
        assertThat(tables.find("hipped", "any", "", 30, "H").orElseThrow().note())
                .isEmpty();
    }

    @Test
    void between_pitches_each_set_runs_straight() {
        // Table 7.4a, zone F: 15 degrees -0.9 and +0.2, 30 degrees -0.5 and +0.7.
        Cpe cpe = tables.find("duo-pitch", "0", "", 20, "F").orElseThrow();

        assertThat(cpe.low10()).isCloseTo(-0.9 + 0.4 / 3, within(1e-12));
        assertThat(cpe.high10()).isCloseTo(0.2 + 0.5 / 3, within(1e-12));
    }

    @Test
    void values_of_different_sign_are_not_mixed() {
        // Table 7.4a, zone J: 5 degrees +0.2 and -0.6, 15 degrees -1.0 and 0.0.
        Cpe cpe = tables.find("duo-pitch", "0", "", 10, "J").orElseThrow();

        assertThat(cpe.low10()).isCloseTo(-0.8, within(1e-12));
        assertThat(cpe.high10()).isCloseTo(0.1, within(1e-12));
        // Zone I of a trough: -15 degrees -0.5 alone, -5 degrees +0.2 and -0.6.
        Cpe trough = tables.find("duo-pitch", "0", "", -10, "I").orElseThrow();
        assertThat(trough.high10()).isEqualTo(0.2);
        assertThat(trough.low10()).isCloseTo(-0.55, within(1e-12));
        assertThat(trough.note()).contains("differ in sign");
        assertThat(cpe.note()).isEmpty();
    }

    @Test
    void beyond_the_table_there_is_no_value() {
        assertThat(tables.find("duo-pitch", "0", "", 80, "F")).isEmpty();
        assertThat(tables.find("duo-pitch", "90", "", 15, "J")).isEmpty();
    }

    @Test
    void a_value_tells_how_sure_it_is() {
        assertThat(tables.find("duo-pitch", "0", "", 15, "F").orElseThrow().certainty())
                .isEqualTo(Certainty.SEEN);
        assertThat(tables.find("hipped", "any", "", 15, "L").orElseThrow().certainty())
                .isEqualTo(Certainty.MEMORY);
    }

    @Test
    void a_users_table_replaces_the_whole_table_of_its_form_and_wind() {
        String text = "table,form,wind,case,set,coefficients\nNA.1,duo-pitch,0,15,1,F=-1.1/-1.9\n";
        CoefficientTables own = tables.overriddenBy(new StringReader(text), "annex.csv");

        Cpe cpe = own.find("duo-pitch", "0", "", 15, "F").orElseThrow();
        assertThat(cpe.low10()).isEqualTo(-1.1);
        assertThat(own.source("duo-pitch", "0", "", cpe).sentence())
                .isEqualTo("annex.csv, table NA.1 (as given for the project).");
        assertThat(own.find("duo-pitch", "0", "", 30, "F")).isEmpty();
        assertThat(own.find("duo-pitch", "90", "", 30, "F")).isPresent();
    }

    @Test
    void a_malformed_coefficient_is_refused_with_its_line() {
        StringReader text = new StringReader("table,form,wind,case,set,coefficients\nNA.1,duo-pitch,0,15,1,F=-1.1\n");

        assertThatThrownBy(() -> tables.overriddenBy(text, "annex.csv"))
                .isInstanceOf(WindException.class)
                .hasMessageContaining("annex.csv:2");
    }
}
