package runtrue.wind.eurocode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import runtrue.wind.Pressure;
import runtrue.wind.TestRoofs;
import runtrue.wind.WindPlace;
import runtrue.wind.WindPressures;
import runtrue.wind.WindResult;
import runtrue.wind.ZonePressure;
import runtrue.wind.site.EurocodeSite;

/** Net pressures w = qp (cpe - cpi), EN 1991-1-4:2005 5.2, on the hall of SBE-3B at a pitch that the table has. */
class EurocodePressuresTest {
    private static final EurocodeSite SITE = EurocodeSite.recommended(26, "III");
    private static final WindResult HALL = WindPressures.of(SITE, TestRoofs.duo(60, 32, 3.71, 8, 15));
    private static final double QP = PeakPressure.at(8, SITE).peak();

    private static Pressure on(String slope, String wind, String zone, double area) {
        return HALL.zones().stream()
                .filter(z -> z.zone().slope().equals(slope)
                        && z.zone().wind().equals(wind)
                        && z.zone().name().equals(zone))
                .findFirst()
                .map(z -> z.pressure().at(area))
                .orElseThrow();
    }

    @Test
    void suction_is_the_lower_set_with_the_higher_internal_pressure() {
        Pressure f = on("A", "wind 0°", "F", 10);

        assertThat(f.suction().orElseThrow()).isCloseTo(QP * (0.9 + 0.2), within(1e-6));
        assertThat(f.pressing().orElseThrow()).isCloseTo(QP * (0.2 + 0.3), within(1e-6));
    }

    @Test
    void a_clip_sees_the_peak_of_a_small_area() {
        assertThat(on("A", "wind 0°", "F", 0.6).suction().orElseThrow()).isCloseTo(QP * 2.2, within(1e-6));
    }

    @Test
    void the_plane_that_is_windward_for_one_wind_is_leeward_for_the_opposite() {
        assertThat(on("A", "wind 180°", "J", 10).suction().orElseThrow()).isCloseTo(QP * 1.2, within(1e-6));
        assertThat(on("B", "wind 180°", "F", 10).suction().orElseThrow()).isCloseTo(QP * 1.1, within(1e-6));
    }

    @Test
    void at_each_place_the_worst_wind_governs() {
        for (WindPlace place : HALL.places()) {
            double worst = place.zones().stream()
                    .mapToDouble(z -> z.pressure().at(10).suction().orElseThrow())
                    .max()
                    .orElseThrow();

            assertThat(place.zones()).hasSize(4);
            assertThat(place.suction(10)).hasValue(worst);
            assertThat(place.governing(10).pressure().at(10).suction()).hasValue(worst);
        }
    }

    @Test
    void given_internal_coefficients_replace_the_worst_of_default() {
        EurocodeSite sealed = new EurocodeSite(26, "III", 1, List.of(0.0), SITE.national(), SITE.coefficients());
        WindResult result = WindPressures.of(sealed, TestRoofs.duo(60, 32, 3.71, 8, 15));

        assertThat(result.zones().get(0).pressure().at(10).suction().orElseThrow())
                .isCloseTo(QP * 0.9, within(1e-6));
        assertThat(HALL.steps()).anyMatch(s -> s.contains("openings not known"));
        assertThat(result.steps()).noneMatch(s -> s.contains("openings not known"));
    }

    @Test
    void a_pitch_beyond_the_table_is_not_available_and_says_so() {
        WindResult steep = WindPressures.of(SITE, TestRoofs.duo(60, 32, 3, 90, 80));

        assertThat(steep.places())
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.suction(1)).isEmpty());
        assertThat(steep.notAvailable()).isNotEmpty().allMatch(s -> s.contains("Not available: "));
    }

    @Test
    void the_result_names_standard_edition_sources_and_what_it_does_not_replace() {
        assertThat(HALL.standard()).isEqualTo("EN 1991-1-4:2005+A1:2010");
        assertThat(HALL.caution()).contains(HALL.standard(), "does not replace the engineer's design", "local codes");
        assertThat(HALL.sources())
                .anyMatch(s -> s.contains("table 7.4a (read in a reproduction of the standard)"))
                .anyMatch(s -> s.contains("figures 7.6 to 7.9 (from memory"));
    }

    @Test
    void a_duo_pitch_below_five_degrees_takes_the_flat_table() {
        WindResult low = WindPressures.of(SITE, TestRoofs.duo(60, 32, 7, 8, 3.6));

        assertThat(low.zones())
                .extracting(ZonePressure::zone)
                .extracting(z -> z.name())
                .doesNotContain("J");
        assertThat(low.sources()).anyMatch(s -> s.contains("table 7.2"));
    }
}
