package runtrue.wind.eurocode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.wind.TestRoofs.area;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.wind.TestRoofs;
import runtrue.wind.WindPlace;
import runtrue.wind.WindPressures;
import runtrue.wind.WindResult;
import runtrue.wind.form.EavesDetail;
import runtrue.wind.form.WindRoof;
import runtrue.wind.site.EurocodeSite;

/** Zones of EN 1991-1-4:2005 figures 7.6 to 7.9 (from memory), areas by hand from the fractions of e. */
class EurocodeZonesTest {
    private static final EurocodeSite SITE = EurocodeSite.recommended(26, "III");

    /** The hall of SBE-3B: 32 x 60 m, 8 m high; e = 16 m for wind on either side. */
    private static final WindResult HALL = WindPressures.of(SITE, TestRoofs.duo(60, 32, 6, 8, 7.1));

    @ParameterizedTest(name = "{0}, {1}: {2} m2")
    @CsvSource({
        "wind 0°, F, 12.8",
        "wind 0°, G, 83.2",
        "wind 0°, H, 864.0",
        "wind 0°, J, 96.0",
        "wind 0°, I, 864.0",
        "wind 90°, F, 12.8",
        "wind 90°, G, 38.4",
        "wind 90°, H, 204.8",
        "wind 90°, I, 1664.0",
        "wind 180°, F, 12.8",
        "wind 180°, J, 96.0",
        "wind 270°, H, 204.8"
    })
    void hall_of_sbe_3b(String wind, String zone, double expected) {
        assertThat(area(HALL, wind, zone)).isCloseTo(expected, within(1e-3));
    }

    @Test
    void the_result_prints_e_and_the_reference_height_of_sbe_3b() {
        assertThat(HALL.steps())
                .anyMatch(s -> s.startsWith("At 8.00 m: vb 26.0 m/s"))
                .contains("Wind 90°, from 90° clockwise of the y axis: b 32.00 m, d 60.00 m, e 16.00 m.");
    }

    @Test
    void a_true_area_is_larger_than_in_plan_by_the_pitch() {
        assertThat(HALL.zones())
                .allSatisfy(z -> assertThat(z.zone().trueArea())
                        .isCloseTo(z.zone().planArea() / Math.cos(Math.toRadians(7.1)), within(1e-6)));
    }

    @ParameterizedTest(name = "{0}, {1}: {2} m2")
    @CsvSource({
        // 30 x 20 m, 5 m high: e = 10 for all winds; strips 1 m deep, corners 2.5 m long, H to 5 m.
        "wind 0°, F, 5.0", "wind 0°, G, 25.0", "wind 0°, H, 120.0", "wind 0°, I, 450.0",
        "wind 90°, F, 5.0", "wind 90°, G, 15.0", "wind 90°, H, 80.0", "wind 90°, I, 500.0"
    })
    void flat_roof(String wind, String zone, double expected) {
        WindResult result = WindPressures.of(SITE, TestRoofs.flat(TestRoofs.rectangle(30, 20), 5, EavesDetail.sharp()));

        assertThat(area(result, wind, zone)).isCloseTo(expected, within(1e-3));
    }

    @ParameterizedTest(name = "{0}, {1}: {2} m2")
    @CsvSource({
        "wind 0°, F, 5.0", "wind 0°, G, 25.0", "wind 0°, H, 570.0", "wind 180°, F, 5.0", "wind 180°, H, 570.0",
        "wind 90°, Fup, 2.5", "wind 90°, Flow, 2.5", "wind 90°, G, 15.0", "wind 90°, H, 80.0", "wind 90°, I, 500.0"
    })
    void mono_pitch_roof(String wind, String zone, double expected) {
        assertThat(area(WindPressures.of(SITE, TestRoofs.mono(30, 20, 5, 10)), wind, zone))
                .isCloseTo(expected, within(1e-3));
    }

    @Test
    void the_high_corner_of_a_mono_pitch_roof_lies_at_its_high_edge() {
        WindResult result = WindPressures.of(SITE, TestRoofs.mono(30, 20, 5, 10));

        assertThat(result.zones())
                .filteredOn(z -> z.zone().name().equals("Fup"))
                .hasSize(2)
                .allSatisfy(
                        z -> assertThat(z.zone().region().getCentroid().getY()).isCloseTo(18.75, within(1e-6)));
    }

    @ParameterizedTest(name = "{0}, {1}: {2} m2")
    @CsvSource({
        // 40 x 20 m, e = min(b, 2 x 5) = 10. Windward plane (40 + 20) / 2 x 10 = 300: corners 2 x (2.5 x 1), less
        // 0.5 each beyond the hips, G 35. The leeward plane is as large; J lies along the ridge of 20 m.
        "wind 0°, F, 4.0",
        "wind 0°, G, 35.0",
        "wind 0°, H, 261.0",
        "wind 0°, J, 20.0",
        // Strips of 1 m along hips of 14.142 m that meet the eaves at 45 degrees: 14.142 - 0.5 each, K less what J has
        // of it.
        "wind 0°, K, 26.456",
        "wind 0°, I, 253.544",
        "wind 0°, L, 27.284",
        // The side planes up to e/2 = 5 m, less L: a triangle of legs 5 - 1.414 each.
        "wind 0°, M, 12.858",
        "wind 0°, N, 159.858"
    })
    void hipped_roof(String wind, String zone, double expected) {
        assertThat(area(WindPressures.of(SITE, TestRoofs.hipped(40, 20, 3, 5, 11.31)), wind, zone))
                .isCloseTo(expected, within(1e-3));
    }

    @Test
    void a_hipped_roof_has_strips_along_hips_on_side_and_leeward_planes() {
        WindResult result = WindPressures.of(SITE, TestRoofs.hipped(40, 20, 3, 5, 11.31));

        assertThat(result.zones().stream()
                        .filter(z -> z.zone().wind().equals("wind 0°"))
                        .collect(Collectors.groupingBy(
                                z -> z.zone().slope(),
                                Collectors.mapping(z -> z.zone().name(), Collectors.joining(" ")))))
                .containsEntry("A", "F G H")
                .containsEntry("B", "J K I")
                .containsEntry("C", "L M N")
                .containsEntry("D", "L M N");
    }

    @Test
    void a_hipped_roof_says_that_some_of_its_shapes_are_little_sure() {
        assertThat(WindPressures.of(SITE, TestRoofs.hipped(40, 20, 3, 5, 11.31)).assumptions())
                .anyMatch(s -> s.contains("K, L, M and N are from memory and little sure"));
        assertThat(HALL.assumptions()).noneMatch(s -> s.contains("K, L, M and N"));
    }

    @Test
    void the_upwind_plane_of_a_trough_is_the_windward_one_although_it_falls_with_the_wind() {
        WindResult result = WindPressures.of(SITE, TestRoofs.troughed(60, 32, 8, 10));

        assertThat(result.zones())
                .filteredOn(z -> z.zone().name().equals("J"))
                .extracting(z -> z.zone().slope() + " " + z.zone().wind())
                .containsExactlyInAnyOrder("A wind 0°", "B wind 180°");
        assertThat(result.notAvailable()).isEmpty();
    }

    @Test
    void an_l_shaped_plan_has_five_outward_corners_and_says_what_was_assumed() {
        WindRoof roof =
                TestRoofs.flat(TestRoofs.polygon(0, 0, 40, 0, 40, 15, 20, 15, 20, 30, 0, 30), 5, EavesDetail.sharp());
        WindResult result = WindPressures.of(SITE, roof);

        assertThat(result.assumptions()).anyMatch(a -> a.startsWith("The plan is not rectangular"));
        double[] corners = result.places().stream()
                .filter(p -> p.governing(10).zone().name().equals("F"))
                .mapToDouble(WindPlace::planArea)
                .toArray();
        // e = 10: an L of two strips of 2.5 m by 1 m at each outward corner, less the square they share.
        assertThat(Arrays.stream(corners).sum()).isCloseTo(5 * 4.0, within(1e-3));
    }

    @Test
    void a_parapet_raises_the_reference_height_and_eases_the_corners() {
        WindRoof roof = TestRoofs.flat(TestRoofs.rectangle(14.42, 11.2), 13.08, EavesDetail.parapet(0.40));

        // The flat roof of the public calculation in terrain III: ze = 13.08 + 0.40.
        assertThat(EurocodePressures.referenceHeight(roof)).isCloseTo(13.48, within(1e-9));
        WindResult result = WindPressures.of(EurocodeSite.recommended(22, "III"), roof);
        // hp/h = 0.0306: F between -1.6 at 0.025 and -1.4 at 0.05.
        assertThat(result.zones().get(0).pressure().at(10).how()).startsWith("cpe -1.56 to -1.56 for 10.00 m²");
    }
}
