package runtrue.rules.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Envelope;
import runtrue.ifc.Element;
import runtrue.ifc.MaterialLayer;
import runtrue.roof.Interval;
import runtrue.roof.Roof;
import runtrue.roof.above.Fixture;
import runtrue.rules.Judgement;
import runtrue.rules.Outcome;
import runtrue.rules.RoofSystems;
import runtrue.rules.RuleException;
import runtrue.rules.RuleSets;
import runtrue.rules.SettingsFiles;

/** Penetrations of a plane of 10 by 12 m, level unless it says otherwise, and things fixed on it; worked by hand. */
class PenetrationRulesTest {
    private static final Judge JUDGE =
            Judge.of(RuleSets.bundled("long-run-sheets"), RoofSystems.bundled("kestrel-500"));

    private static List<Judgement> judge(String rule, Roof roof, String... settings) {
        Map<String, String> stated = new TreeMap<>(Map.of(
                "rainfall", "360 mm/h",
                "temperature_range", "75 K",
                "rolled_on_site", "true",
                "rolling_limit", "60 m"));
        for (int i = 0; i < settings.length; i += 2) {
            stated.put(settings[i], settings[i + 1]);
        }
        DropFacts drop = new DropFacts("demo", 1, List.of(), List.of(), false, false);
        return JUDGE.judge(SettingsFiles.load(Optional.empty(), Optional.empty(), stated), roof, drop).stream()
                .filter(j -> j.rule().equals(rule))
                .toList();
    }

    private static Roof roof(double u0, double v0, double u1, double v1, Fixture... fixtures) {
        TestPlanes plane = TestPlanes.of("low", 0, 3, 3, 10, 12).withHole(u0, v0, u1, v1);
        return TestPlanes.roof(List.of(plane), List.of(), Map.of(), fixtures);
    }

    private static Judgement only(String rule, Roof roof, String... settings) {
        List<Judgement> judged = judge(rule, roof, settings);
        assertThat(judged).hasSize(1);
        return judged.get(0);
    }

    @ParameterizedTest
    @CsvSource({"4, 5, CONFORMS, 1000", "4, 5.2, DOES_NOT_CONFORM, 1200"})
    void width_is_measured_across_the_fall(double from, double to, Outcome expected, double millimetres) {
        Judgement width = only("penetration-width", roof(from, 4, to, 8));
        assertThat(width.outcome()).isEqualTo(expected);
        assertThat(width.measured().orElseThrow().si() * 1000).isCloseTo(millimetres, within(1e-6));
    }

    /** From 3.9 to 5.2 it reaches into the strips from 3.5, 4, 4.5 and 5: four pans. */
    @Test
    void the_pans_that_it_dams_are_counted() {
        assertThat(only("penetration-width", roof(3.9, 4, 5.2, 8)).message()).contains("4 pans dammed");
    }

    @ParameterizedTest
    @CsvSource({
        "4, 4, 5, 11.8, 200, DOES_NOT_CONFORM",
        "4, 0.25, 5, 4, 250, DOES_NOT_CONFORM",
        "0.1, 4, 1, 6, 100, DOES_NOT_CONFORM",
        "9, 4, 9.9, 6, 100, DOES_NOT_CONFORM",
        "4, 4, 5, 6, 4000, CONFORMS"
    })
    void the_nearest_edge_of_the_plane_counts(
            double u0, double v0, double u1, double v1, double millimetres, Outcome expected) {
        Judgement clearance = only("penetration-clearance", roof(u0, v0, u1, v1));
        assertThat(clearance.outcome()).isEqualTo(expected);
        assertThat(clearance.measured().orElseThrow().si() * 1000).isCloseTo(millimetres, within(1e-6));
    }

    /** Steel, 75 K: 12e-6 x 75 = 0.0009 of the length from the fixed point to the far end of the penetration, in mm. */
    @ParameterizedTest
    @CsvSource({"ridge, 9.0", "eave, 3.6", "middle, 3.6"})
    void movement_grows_with_the_distance_from_the_fixed_point(String fixed, double millimetres) {
        // From 2 to 4 of 12 m: 10 m from the ridge to its lower end, 4 m from the eave to its upper one; from the
        // middle, at 6 m,
        // 4 m to its lower end, half of which moves each way.
        Judgement movement = only("penetration-movement", roof(4, 2, 5, 4), "fixed_point", fixed);
        assertThat(movement.measured().orElseThrow().si() * 1000).isCloseTo(millimetres, within(1e-9));
        assertThat(movement.outcome()).isEqualTo(Outcome.CONFORMS);
    }

    @Test
    void a_penetration_far_from_the_fixed_point_locks_the_sheets() {
        TestPlanes plane = TestPlanes.of("low", 0, 3, 3, 10, 40).withHole(4, 2, 5, 3);
        Roof roof = TestPlanes.roof(List.of(plane), List.of(), Map.of());
        // 38 m x 0.9 mm = 34.2 mm, against 10 mm.
        assertThat(only("penetration-movement", roof).outcome()).isEqualTo(Outcome.DOES_NOT_CONFORM);
    }

    /**
     * A pan of 0.5 x 12 and half of 1 x 4 m above the penetration: 8 m2 true; in plan x cos 3 degrees, and half of the rise x sin
     * 3 degrees: 8 x (0.99863 + 0.02617) = 8.1984, at 0.1 l/s on each 0.8198.
     */
    @Test
    void a_pan_beside_drains_half_of_what_is_held_up() {
        Judgement water = only("penetration-water", roof(4, 4, 5, 8));
        assertThat(water.measured().orElseThrow().si() * 1000).isCloseTo(0.8198, within(1e-4));
    }

    private static Fixture fixture(String name, String ifcClass, String material, double u0, double v0) {
        Element element = TestPlanes.element(
                name,
                ifcClass,
                material.isEmpty() ? List.of() : List.of(new MaterialLayer(material, OptionalDouble.empty())));
        return new Fixture(
                "low", element, new Interval(u0, u0 + 1), new Interval(v0, v0 + 1.6), new Interval(0.08, 0.12));
    }

    @Test
    void solar_devices_are_found_by_class_and_others_by_the_stated_pattern_alone() {
        Roof roof =
                roof(4, 2, 5, 3, fixture("PV 1", "IfcSolarDevice", "", 1, 6), fixture("Walkway", "IfcPlate", "", 7, 6));
        assertThat(judge("rib-clamps", roof))
                .singleElement()
                .satisfies(j -> assertThat(j.outcome()).isEqualTo(Outcome.CONFORMS));
        assertThat(judge("rib-clamps", roof, "fixtures", "^walkway"))
                .singleElement()
                .satisfies(j -> assertThat(j.elements()).hasSize(2));
    }

    @Test
    void a_pattern_that_is_none_is_refused() {
        assertThatThrownBy(() -> judge("rib-clamps", roof(4, 2, 5, 3), "fixtures", "(walkway"))
                .isInstanceOf(RuleException.class)
                .hasMessageContaining("fixtures is no pattern");
    }

    /** From 6 up to 3 along the fall is 3 m; across, 4 - 2 = 2 m: sqrt(13) = 3.6056 m. */
    @Test
    void work_near_an_unguarded_opening_is_measured_along_the_plane() {
        Roof far = roof(4, 2, 5, 3, fixture("PV 1", "IfcSolarDevice", "", 1, 6));
        Judgement near = only("work-near-openings", far, "openings_guarded", "false");
        assertThat(near.measured().orElseThrow().si()).isCloseTo(Math.sqrt(13), within(1e-9));
        assertThat(near.outcome()).isEqualTo(Outcome.CONFORMS);
        Roof close = roof(4, 2, 5, 3, fixture("PV 1", "IfcSolarDevice", "", 4, 3.5));
        assertThat(only("work-near-openings", close, "openings_guarded", "false")
                        .outcome())
                .isEqualTo(Outcome.DOES_NOT_CONFORM);
        assertThat(judge("work-near-openings", close, "openings_guarded", "true"))
                .isEmpty();
        assertThat(judge("work-near-openings", close)).isEmpty();
        assertThat(only("openings-guarded", close).message()).contains("Work near openings");
    }

    @Test
    void zones_that_were_not_formed_are_the_reason_why_nothing_is_said_of_a_things_place() {
        Judgement zone = only("fixture-zone", roof(4, 2, 5, 3, fixture("PV 1", "IfcSolarDevice", "", 1, 6)));
        assertThat(zone.outcome()).isEqualTo(Outcome.NOT_ASSESSED);
        assertThat(zone.reason()).contains("the plane belongs to no building");
    }

    @ParameterizedTest
    @CsvSource({"Anodised aluminium, 0.30, DOES_NOT_CONFORM", "Hot-dip galvanised steel, 0, CONFORMS"})
    void metals_on_the_sheets_are_compared_with_them(String material, double volts, Outcome expected) {
        Judgement metal = only(
                "fixture-metal",
                roof(4, 2, 5, 3, fixture("PV 1", "IfcSolarDevice", material, 1, 6)),
                "environment",
                "normal");
        assertThat(metal.measured().orElseThrow().si()).isCloseTo(volts, within(1e-9));
        assertThat(metal.outcome()).isEqualTo(expected);
    }

    @Test
    void rooflights_of_one_kind_are_told_of_together() {
        TestPlanes plane = new TestPlanes(
                "low",
                Vector3D.of(0, 0, 3),
                3,
                10,
                12,
                "",
                List.of(new Envelope(1, 2.2, 4, 5), new Envelope(4, 5.2, 4, 5), new Envelope(7, 8.2, 4, 5)));
        Judgement width = only("penetration-width", TestPlanes.roof(List.of(plane), List.of(), Map.of()));
        assertThat(width.subject()).isEqualTo("penetrations 1 to 3 of plane low");
    }
}
