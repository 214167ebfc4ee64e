package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.result.BodyResult;
import runtrue.result.BodyResult.Zone;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;
import runtrue.result.json.ResultJson;

/** Wind zones of the samples against the figures worked by hand in their README. */
class SampleWindTest {
    private static final Path ROOT = Path.of(System.getProperty("runtrue.root", "../.."));

    private static final List<String> SAMPLES = List.of("kiln-hall", "lock-office", "cart-shed", "rope-walk");

    private static final Map<String, CheckResult> RESULTS = new TreeMap<>();

    @BeforeAll
    static void check(@TempDir Path output) throws IOException {
        for (String sample : SAMPLES) {
            CommandRun.of(
                    options -> ModelCheck.with(options, Instant.EPOCH),
                    "check",
                    ROOT.resolve("sample-models").resolve(sample).toString(),
                    "--output",
                    output.toString());
            RESULTS.put(sample, ResultJson.read(output.resolve(sample).resolve("result.json")));
        }
    }

    private static CheckResult result(String sample) {
        CheckResult result = RESULTS.get(sample);
        if (result == null) {
            throw new AssertionError("no result for " + sample);
        }
        return result;
    }

    private static PlaneResult plane(String element) {
        return result("kiln-hall").planes().stream()
                .filter(p -> p.elements().stream().anyMatch(e -> e.name().equals(element)))
                .findFirst()
                .orElseThrow();
    }

    /** Hardest lifted first. */
    private static List<Zone> zones(String element) {
        String plane = plane(element).id();
        return result("kiln-hall").bodies().stream()
                .flatMap((BodyResult b) -> b.zones().stream())
                .filter(z -> z.plane().equals(plane))
                .sorted(Comparator.comparingDouble(
                        z -> -z.uplift().suctionKilopascals().orElse(0)))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"Hall roof north, At 9.00 m, 496", "Lean-to roof slab, At 6.09 m, 423"})
    void peak_velocity_pressures_are_those_of_the_readme(String element, String height, int pascals) {
        String plane = plane(element).id();
        assertThat(result("kiln-hall").bodies())
                .filteredOn(b -> b.planes().contains(plane))
                .singleElement()
                .satisfies(b -> assertThat(b.winds().get(0).steps().get(0))
                        .startsWith(height)
                        .endsWith("peak velocity pressure " + pascals + " Pa."));
    }

    @ParameterizedTest
    @CsvSource({
        "0, F, corner, 16.289, 1.316",
        "1, F, corner, 9.774, 1.182",
        "2, G, edge, 28.416, 1.092",
        "3, G, edge, 49.411, 1.067",
        "4, H, interior, 152.757, 0.695",
        "5, H, interior, 194.128, 0.650"
    })
    void zones_of_a_slope_are_those_of_the_readme(int rank, String name, String kind, double area, double suction) {
        assertThat(zones("Hall roof north")).hasSize(6);
        Zone zone = zones("Hall roof north").get(rank);
        assertThat(zone.name()).isEqualTo(name);
        assertThat(zone.kind()).isEqualTo(kind);
        assertThat(zone.areaSquareMetres()).isCloseTo(area, within(6e-4));
        assertThat(zone.uplift().suctionKilopascals().orElseThrow()).isCloseTo(suction, within(6e-4));
        assertThat(zone.uplift().standard()).isEqualTo("EN 1991-1-4:2005+A1:2010");
        assertThat(zone.uplift().source()).contains("read in a reproduction of the standard");
    }

    @Test
    void one_clip_in_zone_f_is_loaded_as_in_the_readme() {
        Zone zone = zones("Hall roof south").get(0);
        assertThat(zone.tributaryMetres()).isCloseTo(1.3, within(1e-4));
        assertThat(zone.uplift().loadFactor()).hasValue(1.5);
        assertThat(zone.uplift().clipForceKilonewtons().orElseThrow()).isCloseTo(1.283, within(6e-4));
        assertThat(zone.uplift().utilisation().orElseThrow()).isCloseTo(1.07, within(6e-3));
        assertThat(zone.uplift().spacingAllowedMetres().orElseThrow()).isCloseTo(1.216, within(6e-4));
        assertThat(zone.uplift().clipsPerSquareMetre().orElseThrow()).isCloseTo(1.64, within(6e-3));
    }

    @Test
    void the_middle_of_the_south_slope_lacks_its_rooflights_and_a_purlin() {
        Zone zone = zones("Hall roof south").get(5);
        assertThat(zone.tributaryMetres()).isCloseTo(2.025, within(1e-4));
        assertThat(zone.uplift().suctionKilopascals().orElseThrow()).isCloseTo(0.649, within(6e-4));
    }

    @ParameterizedTest
    @ValueSource(strings = {"kiln-hall", "lock-office", "cart-shed", "rope-walk"})
    void zones_cover_every_plane(String sample) {
        for (PlaneResult plane : result(sample).planes()) {
            double sum = result(sample).bodies().stream()
                    .flatMap((BodyResult b) -> b.zones().stream())
                    .filter(z -> z.plane().equals(plane.id()))
                    .mapToDouble(Zone::areaSquareMetres)
                    .sum();
            assertThat(sum).as(plane.name()).isCloseTo(plane.areaSquareMetres(), within(1e-3));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"lock-office", "cart-shed", "rope-walk"})
    void the_other_samples_have_pressures_as_given(String sample) {
        assertThat(result(sample).bodies()).isNotEmpty().allSatisfy(b -> {
            assertThat(b.winds()).isEmpty();
            assertThat(b.zones()).isNotEmpty().allMatch(z -> z.uplift().given());
        });
    }

    @Test
    void the_caution_of_the_standard_is_told_with_the_results() {
        assertThat(result("kiln-hall").cautions())
                .anySatisfy(
                        c -> assertThat(c).contains("EN 1991-1-4:2005+A1:2010").contains("engineer's design"));
    }
}
