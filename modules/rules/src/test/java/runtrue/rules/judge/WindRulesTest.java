package runtrue.rules.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.roof.Roof;
import runtrue.roof.ZoneKind;
import runtrue.rules.DropSettings;
import runtrue.rules.Judgement;
import runtrue.rules.Outcome;
import runtrue.rules.RoofSystem;
import runtrue.rules.RoofSystems;
import runtrue.rules.RuleException;
import runtrue.rules.RuleSet;
import runtrue.rules.RuleSets;
import runtrue.rules.SettingsFiles;
import runtrue.rules.wind.BodyZones;
import runtrue.rules.wind.PlaneZone;
import runtrue.rules.wind.WindSetting;

/**
 * Wind from settings to judgements on a mono-pitch roof of 10 x 6 m that falls 5 degrees, its ridge 8 m up. By EN 1991-1-4:
 * vb 24 m/s, terrain III: cr = 0.19 (0.3 / 0.05)^0.07 ln(8 / 0.3) = 0.7073; vm = 16.98 m/s; Iv = 1 / 3.2834 = 0.3046;
 * qp = (1 + 7 x 0.3046) x 0.625 x 16.98^2 = 564 Pa, worked by hand.
 */
class WindRulesTest {
    private static final RuleSet RULES = RuleSets.bundled("long-run-sheets");
    private static final RoofSystem SYSTEM = RoofSystems.bundled("kestrel-500");
    private static final DropFacts DROP = new DropFacts("demo", 1, List.of(), List.of(), false, false);
    private static final Map<String, String> SITE = Map.of(
            "wind.standard", "EN 1991-1-4",
            "wind.velocity", "24 m/s",
            "wind.terrain", "III",
            "wind.load_factor", "1.5",
            "building_height", "8 m");

    @TempDir
    Path folder;

    private static Map<String, String> without(String name) {
        Map<String, String> some = new TreeMap<>(SITE);
        some.remove(name);
        return some;
    }

    private static Map<String, String> with(String name, String value) {
        Map<String, String> more = new TreeMap<>(SITE);
        more.put(name, value);
        return more;
    }

    private static DropSettings settings(Map<String, String> stated) {
        return SettingsFiles.load(Optional.empty(), Optional.empty(), stated);
    }

    private static Judge judge() {
        return Judge.of(RULES, SYSTEM);
    }

    /** Supports have stretches only where a roof was laid out, so the tributary length is put in here. */
    private static List<BodyZones> zones(Map<String, String> stated, double tributary) {
        DropSettings settings = settings(stated);
        Roof roof = WindTestRoof.gentle(tributary);
        return judge().zones(settings, WindSetting.of(settings), roof, DROP);
    }

    private static List<Judgement> judge(String rule, Map<String, String> stated, double tributary) {
        DropSettings settings = settings(stated);
        return judge().judge(settings, WindTestRoof.gentle(tributary), DROP).stream()
                .filter(j -> j.rule().equals(rule))
                .toList();
    }

    private static void assertNotAssessed(Map<String, String> stated, String reason) {
        for (String rule : List.of("clip-load", "span-under-uplift")) {
            assertThat(judge(rule, stated, 1.2)).isNotEmpty().allSatisfy(j -> {
                assertThat(j.outcome()).isEqualTo(Outcome.NOT_ASSESSED);
                assertThat(j.reason()).contains(reason);
            });
        }
    }

    @Test
    void zones_of_a_standard_cover_the_plane() {
        List<PlaneZone> zones = zones(SITE, 1.2).get(0).zones();
        assertThat(zones).extracting(PlaneZone::name).contains("Fup", "G", "H");
        assertThat(zones.stream().mapToDouble(z -> z.zone().area()).sum()).isCloseTo(60, within(0.01));
    }

    /** qp 564 Pa; Fup at 5 degrees, table 7.3b, cpe,1 -2.6, inside +0.2: 2.8 x 564 = 1.58 kPa. */
    @Test
    void the_suction_of_a_zone_is_that_of_the_standard() {
        PlaneZone worst = zones(SITE, 1.2).get(0).zones().stream()
                .filter(z -> z.name().equals("Fup"))
                .findFirst()
                .orElseThrow();
        assertThat(worst.zone().kind()).isEqualTo(ZoneKind.CORNER);
        assertThat(worst.uplift().suction().orElseThrow()).isCloseTo(2.8 * 564, within(3.0));
        assertThat(worst.uplift().standard()).isEqualTo("EN 1991-1-4:2005+A1:2010");
        assertThat(worst.uplift().source()).contains("table 7.3b").contains("from memory");
        // One clip: 1.58 kPa x 1.5 x 1.2 m x 0.5 m = 1.42 kN of 1.2 kN; what it could carry is 1.2 / (1.5 x 1.58 x
        // 0.5).
        assertThat(worst.uplift().clip().orElseThrow().force()).isCloseTo(1421, within(3.0));
        assertThat(worst.uplift().clip().orElseThrow().tributary()).isCloseTo(1.013, within(0.003));
    }

    @Test
    void clips_that_a_standard_overloads_do_not_conform_and_the_message_says_what_would_do() {
        assertThat(judge("clip-load", SITE, 1.2))
                .filteredOn(j -> j.subject().startsWith("zone Fup"))
                .isNotEmpty()
                .allSatisfy(j -> {
                    assertThat(j.outcome()).isEqualTo(Outcome.DOES_NOT_CONFORM);
                    assertThat(j.message())
                            .startsWith("In zone Fup")
                            .contains("x 1.5 by EN 1991-1-4:2005+A1:2010; it is good for 1.2 kN.");
                    assertThat(j.cure()).contains("none carries more than 1.01").contains("1/m2 or more");
                });
    }

    @Test
    void clips_that_a_standard_does_not_overload_conform() {
        assertThat(judge("clip-load", SITE, 0.6))
                .isNotEmpty()
                .extracting(Judgement::outcome)
                .containsOnly(Outcome.CONFORMS);
        assertThat(judge("span-under-uplift", SITE, 0.6))
                .isNotEmpty()
                .extracting(Judgement::outcome)
                .containsOnly(Outcome.CONFORMS);
    }

    @Test
    void spacing_under_a_standard_s_uplift_is_judged_by_zone() {
        assertThat(judge("span-under-uplift", SITE, 1.2))
                .extracting(Judgement::outcome)
                .contains(Outcome.CONFORMS, Outcome.DOES_NOT_CONFORM);
    }

    @Test
    void without_a_load_factor_nothing_is_assessed() {
        assertNotAssessed(without("wind.load_factor"), "zone.load_factor is not stated; add wind.load_factor");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            wind.velocity   | EN 1991-1-4 needs wind.velocity; state it in runtrue.yaml
            wind.terrain    | EN 1991-1-4 needs wind.terrain; state it in runtrue.yaml
            building_height | building_height is not stated
            """)
    void what_a_standard_needs_and_is_not_stated_is_told(String name, String reason) {
        assertNotAssessed(without(name), reason);
    }

    @Test
    void a_terrain_that_the_standard_does_not_know_is_a_mistake_of_the_settings() {
        assertThatThrownBy(() -> WindSetting.of(settings(with("wind.terrain", "V"))))
                .isInstanceOf(RuleException.class)
                .hasMessageContaining("The terrain category is 'V'; known are 0, I, II, III, IV.");
    }

    @Test
    void what_the_tables_at_hand_do_not_have_is_not_assessed_in_the_module_s_own_words() {
        Map<String, String> stated = with("wind.standard", "AS/NZS 1170.2:2021");
        stated.put("wind.internal.highest", "0.2");
        assertNotAssessed(stated, "but no Cp,e Ka Kc Kp is given.");
    }

    @Test
    void given_pressures_go_before_the_standard_and_are_not_multiplied() {
        Map<String, String> stated = new TreeMap<>(SITE);
        stated.putAll(Map.of("uplift.corner", "1.6 kPa", "uplift.edge", "1.2 kPa", "uplift.interior", "0.8 kPa"));
        assertThat(zones(stated, 1.2).get(0).zones())
                .extracting(
                        PlaneZone::name,
                        z -> z.uplift().suction(),
                        z -> z.uplift().loadFactor())
                .contains(tuple("corner", OptionalDouble.of(1600), OptionalDouble.of(1)));
        // 1.6 kPa x 1.2 m x 0.5 m.
        assertThat(judge("clip-load", stated, 1.2))
                .filteredOn(j -> j.subject().startsWith("the corner zone"))
                .singleElement()
                .satisfies(j -> {
                    assertThat(j.measured().orElseThrow().si()).isCloseTo(960, within(0.1));
                    assertThat(j.facts()).anyMatch(f -> f.startsWith("zone.load_factor = 1 (given pressures"));
                });
    }

    @Test
    void a_given_strip_goes_before_the_formula_of_the_rule_set() {
        Map<String, String> stated = Map.of(
                "wind.given.strip", "1 m",
                "wind.given.reference", "Wind report 12",
                "wind.given.zones.corner", "1.6 kPa",
                "wind.given.zones.edge", "1.2 kPa",
                "wind.given.zones.interior", "0.8 kPa");
        assertThat(zones(stated, 1.2).get(0).zones()).allSatisfy(z -> {
            assertThat(z.zone().width()).isEqualTo(1);
            assertThat(z.uplift().how()).contains("Wind report 12");
        });
    }

    @Test
    void given_pressures_may_be_for_the_zones_of_the_standard() {
        Map<String, String> stated = new TreeMap<>(SITE);
        for (String zone : List.of("Fup", "Flow", "F", "G", "H", "I")) {
            stated.put("wind.given.zones." + zone, "1.1 kPa");
        }
        assertThat(zones(stated, 1.2).get(0).zones()).isNotEmpty().allSatisfy(z -> {
            assertThat(z.uplift().given()).isTrue();
            assertThat(z.uplift().suction()).hasValue(1100);
            assertThat(z.uplift().loadFactor()).hasValue(1);
        });
    }

    @Test
    void a_zone_that_the_engineer_does_not_name_is_not_assessed() {
        assertThat(judge("clip-load", with("wind.given.zones.corner", "1.6 kPa"), 1.2))
                .filteredOn(j -> !j.subject().startsWith("the corner zone"))
                .isNotEmpty()
                .allSatisfy(j -> {
                    assertThat(j.outcome()).isEqualTo(Outcome.NOT_ASSESSED);
                    assertThat(j.reason()).contains("the engineer's pressures name no zone");
                });
    }

    @Test
    void national_values_stand_in_a_file_beside_the_settings() throws IOException {
        Files.writeString(folder.resolve("national.csv"), """
                name,value,clause,status,note
                air_density,1.20,4.5 (1),given,invented
                """);
        Path file = folder.resolve("runtrue.yaml");
        Files.writeString(file, """
                building_height: 8 m
                wind:
                  standard: EN 1991-1-4
                  velocity: 24 m/s
                  terrain: III
                  national: {values: national.csv}
                """);
        DropSettings settings = SettingsFiles.load(Optional.empty(), Optional.of(file), Map.of());
        BodyZones zones = judge().zones(settings, WindSetting.of(settings), WindTestRoof.gentle(1.2), DROP)
                .get(0);
        assertThat(zones.winds()).singleElement().satisfies(wind -> {
            assertThat(wind.sources()).anyMatch(s -> s.startsWith("national.csv, 4.5 (1) air_density"));
            assertThat(wind.steps().get(0)).contains("peak velocity pressure 541 Pa");
            assertThat(wind.caution()).contains("does not replace the engineer's design");
        });
    }

    @Test
    void a_national_file_that_is_not_there_is_told_with_its_place() throws IOException {
        Path file = folder.resolve("runtrue.yaml");
        Files.writeString(file, """
                wind:
                  standard: EN 1991-1-4
                  velocity: 24 m/s
                  terrain: III
                  national: {values: national.csv}
                """);
        DropSettings settings = SettingsFiles.load(Optional.empty(), Optional.of(file), Map.of());
        assertThatThrownBy(() -> WindSetting.of(settings))
                .isInstanceOf(RuleException.class)
                .hasMessageContaining("runtrue.yaml:5: ")
                .hasMessageContaining("national.csv cannot be read");
    }
}
