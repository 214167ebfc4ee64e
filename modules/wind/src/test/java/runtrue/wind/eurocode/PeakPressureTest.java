package runtrue.wind.eurocode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import runtrue.wind.SharedFiles;
import runtrue.wind.WindException;
import runtrue.wind.site.EurocodeSite;

/**
 * EN 1991-1-4:2005+A1 4.2 to 4.5 by public worked examples: Single-Storey Steel Buildings, Part 3 Actions, appendix B
 * ("SBE-3B", RFS2-CT-2008-0030), and two public calculations, one in terrain category III, one in category IV.
 */
class PeakPressureTest {
    @Test
    void hall_of_sbe_3b_in_terrain_iii() {
        PeakPressure p = PeakPressure.at(8, EurocodeSite.recommended(26, "III"));

        assertThat(p.basicPressure()).isCloseTo(422.5, within(0.05));
        assertThat(p.roughness()).isCloseTo(0.706, Percentage.withPercentage(0.5));
        assertThat(p.exposure()).isCloseTo(1.56, Percentage.withPercentage(0.5));
        // The example rounds on the way to its 659 Pa.
        assertThat(p.peak()).isCloseTo(659, Percentage.withPercentage(0.5));
        assertThat(p.peak()).isCloseTo(661.8, within(0.05));
    }

    @Test
    void below_the_least_height_of_terrain_iv_the_wind_is_that_at_it() {
        PeakPressure p = PeakPressure.at(9, EurocodeSite.recommended(26, "IV"));

        assertThat(p.roughness()).isCloseTo(0.54, within(0.005));
        assertThat(p.turbulence()).isCloseTo(0.434, within(0.0005));
        assertThat(p.basicPressure()).isCloseTo(422, within(0.51));
        assertThat(p.exposure()).isCloseTo(1.18, within(0.005));
        assertThat(p.peak()).isCloseTo(497, within(0.5));
    }

    @Test
    void flat_roof_with_parapet_in_terrain_iii() {
        PeakPressure p = PeakPressure.at(13.48, EurocodeSite.recommended(22, "III"));

        assertThat(p.roughness()).isCloseTo(0.82, within(0.005));
        assertThat(p.meanVelocity()).isCloseTo(18.0, within(0.05));
        assertThat(p.turbulence()).isCloseTo(0.263, within(0.0005));
        assertThat(p.basicPressure()).isCloseTo(303, within(0.51));
        assertThat(p.peak()).isCloseTo(580, within(5.0));
    }

    @Test
    void a_grid_of_terrains_and_heights() throws IOException {
        List<String[]> grid = SharedFiles.table("en1991-1-4-exposure.csv");

        assertThat(grid).hasSize(35).allSatisfy(row -> {
            PeakPressure p = PeakPressure.at(Double.parseDouble(row[4]), EurocodeSite.recommended(26, row[0]));
            assertThat(p.roughness()).isCloseTo(Double.parseDouble(row[5]), within(6e-6));
            assertThat(p.turbulence()).isCloseTo(Double.parseDouble(row[6]), within(6e-6));
            assertThat(p.exposure()).isCloseTo(Double.parseDouble(row[7]), within(6e-6));
            assertThat(p.peak()).isCloseTo(Double.parseDouble(row[8]), within(6e-3));
        });
    }

    @Test
    void the_probability_factor_is_one_at_two_per_cent() {
        NationalParameters national = NationalParameters.recommended();

        assertThat(PeakPressure.probabilityFactor(0.02, national)).isEqualTo(1);
        assertThat(PeakPressure.probabilityFactor(0.01, national)).isGreaterThan(1);
    }

    @Test
    void the_orography_factor_raises_the_mean_and_lowers_the_turbulence() {
        EurocodeSite level = EurocodeSite.recommended(26, "II");
        EurocodeSite hill = new EurocodeSite(26, "II", 1.2, List.of(), level.national(), level.coefficients());

        assertThat(PeakPressure.at(10, hill).meanVelocity())
                .isCloseTo(1.2 * PeakPressure.at(10, level).meanVelocity(), within(1e-9));
        assertThat(PeakPressure.at(10, hill).turbulence())
                .isCloseTo(PeakPressure.at(10, level).turbulence() / 1.2, within(1e-9));
    }

    @Test
    void a_users_file_replaces_national_values_and_is_named_as_their_source() {
        NationalParameters own = NationalParameters.recommended()
                .overriddenBy(new StringReader("name,value\nair_density,1.226\nterrain.sea.z0,0.003\n"), "annex.csv");

        assertThat(own.value("air_density")).isEqualTo(1.226);
        assertThat(own.roughness("sea")).isEqualTo(0.003);
        assertThat(own.source("air_density").sentence())
                .isEqualTo("annex.csv, air_density (as given for the project).");
    }

    @Test
    void an_unknown_national_value_is_refused_with_its_line() {
        StringReader text = new StringReader("name,value\nair_densty,1.2\n");

        assertThatThrownBy(() -> NationalParameters.recommended().overriddenBy(text, "annex.csv"))
                .isInstanceOf(WindException.class)
                .hasMessageContaining("annex.csv:2")
                .hasMessageContaining("air_densty");
    }

    @Test
    void an_unknown_terrain_is_refused_with_those_known() {
        EurocodeSite site = EurocodeSite.recommended(26, "V");

        assertThatThrownBy(() -> PeakPressure.at(10, site))
                .isInstanceOf(WindException.class)
                .hasMessage("The terrain category is 'V'; known are 0, I, II, III, IV.");
    }

    @Test
    void above_200_m_there_is_no_pressure() {
        EurocodeSite site = EurocodeSite.recommended(26, "II");

        assertThatThrownBy(() -> PeakPressure.at(201, site)).isInstanceOf(WindException.class);
    }
}
