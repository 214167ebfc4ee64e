package runtrue.rules.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.roof.ReadElement;
import runtrue.roof.Roof;
import runtrue.roof.RoofSettings;
import runtrue.roof.Roofs;
import runtrue.roof.SetOut;
import runtrue.rules.DropSettings;
import runtrue.rules.Judgement;
import runtrue.rules.Outcome;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.RoofSystems;
import runtrue.rules.RuleSets;
import runtrue.rules.SettingsFiles;
import runtrue.rules.wind.WindSetting;
import runtrue.shape.Face;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;

/** What the bundled rule set says of a barrel of 30 m radius that falls at 16 degrees at its eaves. */
class CurvedPlaneTest {
    private static final RoofSystem SYSTEM = RoofSystems.bundled("kestrel-500");

    private static Roof barrel() {
        List<Face> faces = new ArrayList<>();
        for (int i = -8; i < 8; i++) {
            Vector3D a = at(i);
            Vector3D b = at(i + 1);
            Vector3D along = Vector3D.of(12, 0, 0);
            Vector3D normal = along.cross(b.subtract(a)).normalize();
            faces.add(new Face(normal, List.of(a, a.add(along), b.add(along), b), List.of()));
        }
        ReadElement element = new ReadElement(
                TestRoofs.element("barrel", "IfcRoof", "Barrel"),
                "type",
                new Shape.Body(faces, false, Optional.empty(), "Body", List.of()));
        RoofSettings settings = new RoofSettings(
                0.5,
                SetOut.LEFT,
                OptionalDouble.empty(),
                0.6,
                Vector3D.ZERO,
                OptionalDouble.empty(),
                Tolerances.standard());
        return Roofs.layOut(List.of(element), List.of(), settings);
    }

    private static Vector3D at(int i) {
        double angle = Math.toRadians(2 * i);
        return Vector3D.of(0, 30 * Math.sin(angle), 30 * Math.cos(angle));
    }

    private static List<Judgement> judge(String rule, RoofSystem system) {
        return Judge.of(RuleSets.bundled("long-run-sheets"), system)
                .judge(
                        SettingsFiles.load(Optional.empty(), Optional.empty(), Map.of()),
                        barrel(),
                        new DropFacts("demo", 1, List.of(), List.of(), false, false),
                        List.of())
                .stream()
                .filter(j -> j.rule().equals(rule))
                .toList();
    }

    private static RoofSystem curvedTo(double metres) {
        return with("least_curving_radius", metres, "m");
    }

    private static RoofSystem with(String name, double value, String unit) {
        Map<String, Quantity> values = new TreeMap<>(SYSTEM.values());
        values.put(name, new Quantity(value, unit));
        return new RoofSystem(
                SYSTEM.name(), SYSTEM.title(), SYSTEM.source(), "", values, SYSTEM.texts(), SYSTEM.tables());
    }

    @Test
    void a_level_crown_is_never_a_breach_of_the_minimum_pitch() {
        assertThat(judge("minimum-pitch", SYSTEM)).isEmpty();
    }

    @Test
    void a_curved_plane_is_not_assessed_while_the_system_states_no_curving_radius() {
        assertThat(judge("curving-radius", SYSTEM)).singleElement().satisfies(j -> {
            assertThat(j.outcome()).isEqualTo(Outcome.NOT_ASSESSED);
            assertThat(j.reason()).contains("least_curving_radius");
            assertThat(j.measured().orElseThrow().si()).isCloseTo(30, within(1e-6));
        });
    }

    @ParameterizedTest
    @CsvSource({"12, CONFORMS", "30, CONFORMS", "30.5, DOES_NOT_CONFORM", "45, DOES_NOT_CONFORM"})
    void a_curved_plane_is_judged_by_the_radius_that_the_system_states(double least, Outcome expected) {
        assertThat(judge("curving-radius", curvedTo(least)))
                .singleElement()
                .satisfies(j -> assertThat(j.outcome()).isEqualTo(expected));
    }

    /** Tangents at the eaves fall at 8 x 2 degrees. */
    @ParameterizedTest
    @CsvSource({"2, CONFORMS", "15.9, CONFORMS", "16.1, DOES_NOT_CONFORM"})
    void a_curved_plane_must_fall_enough_where_water_leaves_it(double least, Outcome expected) {
        assertThat(judge("eave-pitch-of-curve", with("minimum_pitch", Math.toRadians(least), "deg")))
                .singleElement()
                .satisfies(j -> assertThat(j.outcome()).isEqualTo(expected))
                .satisfies(j -> assertThat(
                                Math.toDegrees(j.measured().orElseThrow().si()))
                        .isCloseTo(16, within(1e-6)));
    }

    /** Flatter than 2 degrees over 2 x 30 m x 2 degrees in radians = 2.094 m. */
    @ParameterizedTest
    @CsvSource({"2.0, DOES_NOT_CONFORM", "2.1, CONFORMS"})
    void its_crown_may_be_flat_for_as_long_as_the_system_says(double longest, Outcome expected) {
        assertThat(judge("flat-crown", with("flat_stretch", longest, "m")))
                .singleElement()
                .satisfies(j -> assertThat(j.outcome()).isEqualTo(expected))
                .satisfies(j ->
                        assertThat(j.measured().orElseThrow().si()).isCloseTo(60 * Math.toRadians(2), within(1e-6)));
    }

    @Test
    void its_crown_is_not_assessed_while_the_system_says_nothing_of_crowns() {
        assertThat(judge("flat-crown", SYSTEM)).singleElement().satisfies(j -> {
            assertThat(j.outcome()).isEqualTo(Outcome.NOT_ASSESSED);
            assertThat(j.reason()).contains("flat_stretch");
        });
    }

    @Test
    void no_water_stands_on_a_barrel() {
        assertThat(judge("sag", SYSTEM))
                .singleElement()
                .satisfies(j -> assertThat(j.outcome()).isEqualTo(Outcome.CONFORMS));
    }

    @Test
    void spans_of_a_curved_plane_without_supports_are_told_of_where_these_are_missing() {
        assertThat(judge("end-span", SYSTEM)).isEmpty();
        assertThat(judge("supports-found", SYSTEM)).singleElement().satisfies(j -> {
            assertThat(j.outcome()).isEqualTo(Outcome.DOES_NOT_CONFORM);
            assertThat(j.message()).contains("Not assessed for want of it:").contains("End span");
        });
    }

    @Test
    void flat_planes_have_no_curving_radius_to_judge() {
        assertThat(Judge.of(RuleSets.bundled("long-run-sheets"), curvedTo(12))
                        .judge(
                                SettingsFiles.load(Optional.empty(), Optional.empty(), Map.of()),
                                TestRoofs.gentle().roof(),
                                new DropFacts("demo", 1, List.of(), List.of(), false, false),
                                List.of()))
                .noneMatch(j -> j.rule().equals("curving-radius"));
    }

    @Test
    void a_standard_s_wind_on_a_curved_plane_is_not_assessed() {
        Map<String, String> site = Map.of(
                "wind.standard", "EN 1991-1-4",
                "wind.velocity", "24 m/s",
                "wind.terrain", "III",
                "wind.load_factor", "1.5",
                "wind.form", "duo-pitch",
                "building_height", "8 m");
        DropSettings settings = SettingsFiles.load(Optional.empty(), Optional.empty(), site);
        DropFacts drop = new DropFacts("demo", 1, List.of(), List.of(), false, false);
        Judge judge = Judge.of(RuleSets.bundled("long-run-sheets"), SYSTEM);
        assertThat(judge.zones(settings, WindSetting.of(settings), barrel(), drop))
                .isNotEmpty()
                .allSatisfy(body -> {
                    assertThat(body.zones()).isEmpty();
                    assertThat(body.lacking().values())
                            .isNotEmpty()
                            .allMatch(why -> why.contains("the plane is curved"));
                });
        assertThat(judge.judge(settings, barrel(), drop))
                .filteredOn(j -> j.rule().equals("clip-load"))
                .noneMatch(j -> j.outcome() == Outcome.CONFORMS);
    }
}
