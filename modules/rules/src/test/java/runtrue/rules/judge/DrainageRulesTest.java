package runtrue.rules.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.roof.EdgeKind;
import runtrue.roof.Roof;
import runtrue.roof.RoofEdge;
import runtrue.rules.Judgement;
import runtrue.rules.Outcome;
import runtrue.rules.RoofSystems;
import runtrue.rules.RuleSets;
import runtrue.rules.SettingsFiles;

/** Water in pans, by areas and rain worked by hand; half a metre of cover, the demo system's capacities. */
class DrainageRulesTest {
    private static final Judge JUDGE =
            Judge.of(RuleSets.bundled("long-run-sheets"), RoofSystems.bundled("kestrel-500"));

    private static List<Judgement> judge(String rule, Roof roof, String... settings) {
        Map<String, String> stated = new TreeMap<>();
        for (int i = 0; i < settings.length; i += 2) {
            stated.put(settings[i], settings[i + 1]);
        }
        DropFacts drop = new DropFacts("demo", 1, List.of(), List.of(), false, false);
        return JUDGE.judge(SettingsFiles.load(Optional.empty(), Optional.empty(), stated), roof, drop).stream()
                .filter(j -> j.rule().equals(rule))
                .toList();
    }

    private static double litresPerSecond(Judgement judgement) {
        return judgement.measured().orElseThrow().si() * 1000;
    }

    /** The run whose plan is W and whose rise is H. */
    private static TestPlanes falling(double plan, double rise, double width) {
        return TestPlanes.of("low", 0, 3, Math.toDegrees(Math.atan2(rise, plan)), width, Math.hypot(plan, rise));
    }

    /**
     * A = L (W + H / 2): a plumbing textbook (2019, level 2 and 3, p. 527) works L 10, W 6, H 3 out to 75 m2, as BS EN
     * 12056-3 has it. At its general rate of 0.021 l/s on each, which is 75.6 mm/h, that is 1.575 l/s, here of 20 pans.
     */
    @Test
    void rain_on_a_pitched_roof_agrees_with_the_textbooks_example() {
        Roof roof = TestPlanes.roof(List.of(falling(6, 3, 10)), List.of(), Map.of());
        Judgement all = judge("drainage", roof, "rainfall", "75.6 mm/h").get(0);
        assertThat(litresPerSecond(all) * 20).isCloseTo(1.575, within(1e-9));
        assertThat(all.outcome()).isEqualTo(Outcome.CONFORMS);
    }

    /** Q = i A / 3600 for 143 m2 at 330 mm/h: 13.108 l/s, of lecture notes on the Malaysian stormwater manual. */
    @Test
    void flow_is_rain_times_area() {
        Roof level = TestPlanes.roof(List.of(TestPlanes.of("low", 0, 3, 0, 10, 14.3)), List.of(), Map.of());
        Judgement all = judge("drainage", level, "rainfall", "330 mm/h").get(0);
        assertThat(litresPerSecond(all) * 20).isCloseTo(13.108, within(5e-4));
    }

    /** A wall 4 m high along a run of 6 m in plan is 24 m2, half of which count: the pan beside it gets 12 m2 more, no other. */
    @Test
    void half_of_a_wall_beside_the_first_sheet_drains_into_its_pan_alone() {
        TestPlanes plane = falling(6, 3, 10);
        RoofEdge wall = plane.edge("wall", EdgeKind.ABUTMENT, 0, 0, 0, plane.run());
        List<Judgement> judged = judge(
                "drainage",
                TestPlanes.roof(List.of(plane), List.of(wall), Map.of("wall", 4.0)),
                "rainfall",
                "360 mm/h");
        assertThat(judged).hasSize(2);
        // 0.5 x (6 + 3 / 2) = 3.75 m2 at 0.1 l/s on each; and 12 m2 of wall.
        assertThat(judged.stream().map(j -> Math.round(litresPerSecond(j) * 1e6) / 1e6))
                .containsExactlyInAnyOrder(1.575, 0.375);
        assertThat(judged).extracting(Judgement::subject).anyMatch(s -> s.startsWith("sheet 1 of"));
    }

    /** 12 m of wall counts as 10, by the Code of Practice of the New Zealand metal roofing industry: 0.5 x 10 x 0.5 = 2.5 m2. */
    @Test
    void a_wall_at_the_upper_end_drains_into_all_pans_and_counts_up_to_ten_metres() {
        TestPlanes plane = falling(6, 3, 10);
        RoofEdge wall = plane.edge("wall", EdgeKind.ABUTMENT, 0, plane.run(), 10, plane.run());
        Judgement all = judge(
                        "drainage",
                        TestPlanes.roof(List.of(plane), List.of(wall), Map.of("wall", 12.0)),
                        "rainfall",
                        "360 mm/h")
                .get(0);
        assertThat(litresPerSecond(all)).isCloseTo(0.1 * (3.75 + 2.5), within(1e-9));
    }

    @Test
    void a_wall_of_unknown_height_leaves_the_sheets_beside_it_unassessed() {
        TestPlanes plane = falling(6, 3, 10);
        RoofEdge wall = plane.edge("wall", EdgeKind.ABUTMENT, 0, 0, 0, plane.run());
        List<Judgement> judged =
                judge("drainage", TestPlanes.roof(List.of(plane), List.of(wall), Map.of()), "rainfall", "75 mm/h");
        assertThat(judged).extracting(Judgement::outcome).containsOnlyOnce(Outcome.NOT_ASSESSED);
        assertThat(judged).anyMatch(j -> j.reason().contains("how high the wall is"));
    }

    /** An upper roof, 20 m in plan and 2 m of rise, ends 1 m above the upper half of the lower one. */
    private static Roof terraced() {
        TestPlanes low = falling(6, 3, 10);
        TestPlanes high = TestPlanes.of("high", 4, 6, Math.toDegrees(Math.atan2(2, 20)), 10, Math.hypot(20, 2));
        List<RoofEdge> edges = new ArrayList<>(List.of(low.eave(), high.eave()));
        return TestPlanes.roof(List.of(low, high), edges, Map.of());
    }

    @ParameterizedTest
    @CsvSource({"gutters, 0.375", "spill, 1.425"})
    void a_roof_above_drains_on_to_the_pans_below_where_it_has_no_gutter(String upper, double expected) {
        List<Judgement> judged = judge("drainage", terraced(), "rainfall", "360 mm/h", "upper_roofs", upper);
        // 3.75 m2 of its own, and 0.5 x (20 + 2 / 2) = 10.5 m2 of the roof above, at 0.1 l/s on each.
        assertThat(judged.stream().filter(j -> j.plane().equals("low")).map(j -> litresPerSecond(j)))
                .singleElement()
                .satisfies(q -> assertThat(q).isCloseTo(expected, within(1e-9)));
    }

    @Test
    void where_a_roof_above_drains_is_never_guessed() {
        List<Judgement> judged = judge("drainage", terraced(), "rainfall", "75 mm/h");
        assertThat(judged)
                .filteredOn(j -> j.plane().equals("low"))
                .singleElement()
                .satisfies(j -> {
                    assertThat(j.outcome()).isEqualTo(Outcome.NOT_ASSESSED);
                    assertThat(j.reason()).contains("high ends above it").contains("upper_roofs");
                });
        assertThat(judged)
                .filteredOn(j -> j.plane().equals("high"))
                .extracting(Judgement::outcome)
                .containsOnly(Outcome.CONFORMS);
    }

    @Test
    void rain_that_nobody_states_is_told_of_once_for_all_planes() {
        assertThat(judge("drainage", terraced())).isEmpty();
        assertThat(judge("settings-information", terraced())).singleElement().satisfies(j -> {
            assertThat(j.outcome()).isEqualTo(Outcome.NOT_ASSESSED);
            assertThat(j.message()).contains("rainfall").contains("Water in the pans");
        });
    }

    @ParameterizedTest
    @CsvSource({"Copper sheet, DOES_NOT_CONFORM", "Galvanised sheet, CONFORMS", "'', CONFORMS"})
    void copper_must_not_drain_on_to_zinc(String material, Outcome expected) {
        Roof roof = terraced();
        TestPlanes high = TestPlanes.of("high", 4, 6, Math.toDegrees(Math.atan2(2, 20)), 10, Math.hypot(20, 2));
        Roof metals = TestPlanes.roof(List.of(falling(6, 3, 10), high.of(material)), roof.edges(), Map.of());
        assertThat(judge("run-off", metals, "environment", "normal", "upper_roofs", "spill"))
                .singleElement()
                .satisfies(j -> assertThat(j.outcome()).isEqualTo(expected));
    }
}
