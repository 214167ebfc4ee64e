package runtrue.rules.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.rules.DropSettings;
import runtrue.rules.Judgement;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.RoofSystems;
import runtrue.rules.RuleSet;
import runtrue.rules.RuleSets;
import runtrue.rules.SettingsFiles;

/**
 * Movement by expansion: the Code of Practice of the New Zealand metal roofing industry gives 12 x 60 x 30 / 1000 = 21.6
 * mm for 30 m of steel and half of it at each end when held in the middle; the other rows follow from the same formula
 * (aluminium 24, copper 17 millionths per kelvin: Serway, College Physics).
 */
class ThermalMovementTest {
    private static final String RULE = """
            rule_set: movement
            version: "1.0.0"
            title: Movement
            rules:
              - id: movement
                title: Movement at the free end
                severity: major
                for: sheet
                measure: >-
                  system.expansion * settings.temperature_range * sheet.length
                  * (settings.fixed_point == "middle" ? 0.5 : 1)
                unit: mm
                at most: system.clip_travel
                source: test
                message: "{subject} moves {measured}"
            """;

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "30, 12e-6, 60 K, ridge, 21.6",
        "30, 12e-6, 60 K, middle, 10.8",
        "30, 12e-6, 75 K, ridge, 27.0",
        "30, 12e-6, 95 K, ridge, 34.2",
        "30, 24e-6, 60 K, eave, 43.2",
        "12, 17e-6, 95 K, eave, 19.38"
    })
    void sheets_move_by_coefficient_range_and_free_length(
            double run, double coefficient, String range, String fixedPoint, double millimetres) throws IOException {
        Path file = folder.resolve("movement.yaml");
        Files.writeString(file, RULE);
        RuleSet rules = RuleSets.load(file);
        RoofSystem demo = RoofSystems.bundled("kestrel-500");
        Map<String, Quantity> values = new TreeMap<>(demo.values());
        values.put("expansion", new Quantity(coefficient, "1/K"));
        RoofSystem system = new RoofSystem("metal", "", "", "", values, Map.of(), Map.of());
        DropSettings settings = SettingsFiles.load(
                Optional.empty(), Optional.empty(), Map.of("temperature_range", range, "fixed_point", fixedPoint));
        List<Judgement> moved = Judge.judge(
                rules,
                system,
                settings,
                TestRoofs.gentle().running(run).roof(),
                new DropFacts("demo", 1, List.of(), List.of(), false, false));
        assertThat(moved)
                .singleElement()
                .satisfies(
                        j -> assertThat(j.measured().orElseThrow().si()).isCloseTo(millimetres / 1000, within(1e-9)));
    }
}
