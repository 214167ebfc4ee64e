package runtrue.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.wind.form.EavesDetail;
import runtrue.wind.form.WindRoof;
import runtrue.wind.site.EurocodeSite;
import runtrue.wind.site.WindSite;

class ClipDemandTest {
    private static WindPlace place(LoadedPressure pressure) {
        WindRoof roof = TestRoofs.flat(TestRoofs.rectangle(10, 10), 5, EavesDetail.sharp());
        WindZone zone = WindZone.of(roof.slopes().get(0), "", "edge", roof.outline());
        return new WindPlace("A", roof.outline(), 100, List.of(new ZonePressure(zone, pressure)));
    }

    private static Pressure suction(double pascals) {
        return Pressure.between(-pascals, 0, "as the test says", new WindSource("test", "", Certainty.GIVEN, ""));
    }

    @Test
    void uplift_is_the_suction_on_the_tributary_area() {
        // 2 kPa on 1.5 m x 0.4 m is 1.2 kN; by arithmetic.
        ClipDemand demand = ClipDemand.at(place(area -> suction(2000)), new ClipLayout(1.5, 0.4, 1000))
                .orElseThrow();

        assertThat(demand.force()).isCloseTo(1200, within(1e-9));
        assertThat(demand.utilisation()).isCloseTo(1.2, within(1e-12));
        assertThat(demand.tributary()).isCloseTo(1.25, within(1e-6));
        assertThat(demand.density()).isCloseTo(2, within(1e-5));
    }

    @Test
    void the_spacing_that_satisfies_uses_the_suction_of_its_own_smaller_area() {
        // 1 kPa on 0.5 m2 and more, 2 kPa below; clips at 0.5 m, so the change is at 1 m of sheet.
        WindPlace place = place(area -> suction(area >= 0.5 ? 1000 : 2000));
        ClipDemand demand = ClipDemand.at(place, new ClipLayout(1.2, 0.5, 600)).orElseThrow();

        assertThat(demand.utilisation()).isCloseTo(1.0, within(1e-12));
        assertThat(demand.tributary()).isCloseTo(0.6, within(1e-6));
    }

    @ParameterizedTest(name = "{0} Pa")
    @CsvSource({"0, 20", "1, 20"})
    void where_hardly_anything_lifts_the_longest_span_looked_at_is_given(double pascals, double expected) {
        assertThat(ClipDemand.at(place(area -> suction(pascals)), new ClipLayout(1, 0.4, 1000))
                        .orElseThrow()
                        .tributary())
                .isEqualTo(expected);
    }

    @Test
    void a_place_of_unknown_suction_has_no_demand() {
        WindSource source = new WindSource("test", "", Certainty.GIVEN, "");

        assertThat(ClipDemand.at(place(area -> Pressure.notAvailable("no table.", source)), new ClipLayout(1, 1, 1)))
                .isEmpty();
    }

    @Test
    void a_clip_without_resistance_is_refused() {
        assertThatThrownBy(() -> new ClipLayout(1, 0.4, 0))
                .isInstanceOf(WindException.class)
                .hasMessageContaining("the resistance 0.0 N");
    }

    private static GivenPressures given(OptionalDouble strip, String... zones) {
        GivenPressures.Given two = new GivenPressures.Given(2000, OptionalDouble.empty());
        return new GivenPressures(
                "Calculation 12 revision B",
                strip,
                List.of(zones).stream().collect(Collectors.toMap(z -> z, z -> two)));
    }

    @Test
    void given_pressures_with_a_strip_make_corner_edge_and_interior() {
        WindRoof roof = TestRoofs.flat(TestRoofs.rectangle(30, 20), 5, EavesDetail.sharp());
        WindResult result =
                WindPressures.given(given(OptionalDouble.of(2), "corner", "edge", "interior"), Optional.empty(), roof);

        assertThat(TestRoofs.area(result, "", "corner")).isCloseTo(4 * 4, within(1e-6));
        assertThat(TestRoofs.area(result, "", "interior")).isCloseTo(26 * 16, within(1e-6));
        assertThat(result.places()).allSatisfy(p -> assertThat(p.suction(0.5)).hasValue(2000));
        assertThat(result.caution()).contains("Calculation 12 revision B", "licensed practice");
    }

    @Test
    void given_pressures_stand_in_for_those_of_the_standard_on_its_zones() {
        WindRoof roof = TestRoofs.flat(TestRoofs.rectangle(30, 20), 5, EavesDetail.sharp());
        WindSite site = EurocodeSite.recommended(26, "III");
        WindResult result =
                WindPressures.given(given(OptionalDouble.empty(), "F", "G", "H", "I"), Optional.of(site), roof);

        assertThat(result.places())
                .isNotEmpty()
                .allSatisfy(p -> assertThat(p.suction(10)).hasValue(2000));
    }

    @Test
    void a_zone_that_the_engineer_does_not_name_is_not_filled_from_the_standard() {
        WindRoof roof = TestRoofs.flat(TestRoofs.rectangle(30, 20), 5, EavesDetail.sharp());
        WindSite site = EurocodeSite.recommended(26, "III");
        WindResult result = WindPressures.given(given(OptionalDouble.empty(), "F", "G", "H"), Optional.of(site), roof);

        assertThat(result.notAvailable())
                .containsExactly("I: Not available: the engineer's pressures name no zone I, only [F, G, H].");
        assertThat(result.places()).filteredOn(p -> p.suction(1).isEmpty()).isNotEmpty();
    }

    @Test
    void given_pressures_without_strip_or_site_are_refused() {
        WindRoof roof = TestRoofs.flat(TestRoofs.rectangle(30, 20), 5, EavesDetail.sharp());
        GivenPressures given = given(OptionalDouble.empty(), "F");

        assertThatThrownBy(() -> WindPressures.given(given, Optional.empty(), roof))
                .isInstanceOf(WindException.class);
        assertThatThrownBy(() -> new GivenPressures("x", OptionalDouble.empty(), Map.of()))
                .isInstanceOf(WindException.class);
    }
}
