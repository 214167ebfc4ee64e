package runtrue.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import runtrue.wind.form.EavesDetail;
import runtrue.wind.form.WindRoof;
import runtrue.wind.site.AsceSite;
import runtrue.wind.site.EurocodeSite;

class GoverningZoneTest {
    private static final EurocodeSite SITE = EurocodeSite.recommended(26, "III");

    /** 60 x 32 m, 15 degrees, 8 m high. */
    private static final WindResult HALL = WindPressures.of(SITE, TestRoofs.duo(60, 32, 3.71, 8, 15));

    private static final List<GoverningZone> ZONES = GoverningZone.of(HALL, 10);

    @Test
    void they_cover_each_plane_once() {
        assertThat(List.of("A", "B"))
                .allSatisfy(plane -> assertThat(ZONES.stream()
                                .filter(z -> z.slope().equals(plane))
                                .mapToDouble(GoverningZone::trueArea)
                                .sum())
                        .isCloseTo(60 * 16 / Math.cos(Math.toRadians(15)), within(1e-3)));
    }

    @Test
    void their_region_is_that_of_their_places() {
        assertThat(ZONES)
                .allSatisfy(z -> assertThat(z.region().getArea())
                        .isCloseTo(
                                z.places().stream()
                                        .mapToDouble(WindPlace::planArea)
                                        .sum(),
                                within(1e-6)));
    }

    @Test
    void a_strip_along_the_ridge_is_governed_by_the_wind_that_makes_it_leeward() {
        // Table 7.4a at 15 degrees, J -1.0; away from the gables nothing lifts harder: 1.6 m x (60 - 2 x 1.6) m.
        assertThat(ZONES)
                .filteredOn(z -> z.slope().equals("A") && z.name().equals("J"))
                .singleElement()
                .satisfies(z -> {
                    assertThat(z.how()).startsWith("J (wind 180°): cpe -1.00 to 0.00 for 10.00 m²");
                    assertThat(z.region().getArea()).isCloseTo(1.6 * (60 - 3.2), within(1e-3));
                });
    }

    @Test
    void corners_at_gables_are_governed_by_the_wind_along_the_ridge() {
        // Table 7.4b at 15 degrees: F and G -1.3, against -0.9 of F for wind on the eaves.
        assertThat(ZONES)
                .filteredOn(z -> z.slope().equals("A") && z.name().equals("F"))
                .anySatisfy(z -> assertThat(z.how()).startsWith("F (wind 90°): cpe -1.30"));
    }

    @Test
    void a_place_with_a_zone_that_is_not_available_is_not_available_as_a_whole() {
        AsceSite older = new AsceSite(AsceSite.Edition.ASCE_7_16, 47, "C", 1, 0.85, 1, AsceSite.Enclosure.ENCLOSED);
        WindRoof flat = TestRoofs.flat(TestRoofs.rectangle(40, 30), 5, EavesDetail.sharp());

        assertThat(GoverningZone.of(WindPressures.of(older, flat), 1))
                .filteredOn(z -> z.suction().isEmpty())
                .singleElement()
                .satisfies(z -> assertThat(z.how()).startsWith("2: Not available: "));
    }
}
