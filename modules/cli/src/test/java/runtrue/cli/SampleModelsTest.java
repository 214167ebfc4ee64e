package runtrue.cli;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.result.CheckResult;
import runtrue.result.EdgeResult;
import runtrue.result.Finding;
import runtrue.result.Outcome;
import runtrue.result.PlaneResult;
import runtrue.result.Severity;
import runtrue.result.json.ResultJson;
import runtrue.samples.expected.ExpectedDrop;
import runtrue.samples.expected.ExpectedDrops;
import runtrue.samples.expected.ExpectedFinding;
import runtrue.samples.expected.ExpectedPlane;
import runtrue.samples.expected.ExpectedSupports;

/** The whole way from the sample models to the results, against the figures worked by hand in their README. */
class SampleModelsTest {
    /** The README gives four decimals. */
    private static final Offset<Double> AS_PRINTED = within(1e-4);

    private static final Path ROOT = Path.of(System.getProperty("runtrue.root", "../.."));

    private static final Map<String, CheckResult> RESULTS = new TreeMap<>();

    private static int exitCode;

    @BeforeAll
    static void check(@TempDir Path output) throws IOException {
        CommandRun run = CommandRun.of(
                options -> ModelCheck.with(options, Instant.EPOCH),
                "check",
                ROOT.resolve("sample-models").toString(),
                "--output",
                output.toString());
        exitCode = run.exitCode();
        for (ExpectedDrop drop : ExpectedDrops.all()) {
            RESULTS.put(
                    drop.folder(), ResultJson.read(output.resolve(drop.folder()).resolve("result.json")));
        }
    }

    static Stream<ExpectedDrop> drops() {
        return ExpectedDrops.all().stream();
    }

    /**
     * By hand: the hall's north plane is 36.3 m wide and 12.418 m up the fall; 73 sheets of 0.5, 91 of 0.4 or 61 of 0.6 cover
     * 0.2, 0.1 or 0.3 m more than that.
     */
    @ParameterizedTest
    @CsvSource({"0.5, 73, 2.484", "0.4, 91, 1.242", "0.6, 61, 3.725"})
    void what_other_cover_widths_would_come_to_stands_beside_the_set_out(double cover, int strips, double waste) {
        PlaneResult north = Objects.requireNonNull(RESULTS.get("kiln-hall")).planes().stream()
                .filter(p -> p.name().endsWith("north plane 2"))
                .findFirst()
                .orElseThrow();
        assertThat(north.setOuts())
                .filteredOn(s -> s.coverWidthMetres() == cover)
                .hasSize(3)
                .filteredOn(s -> s.setOut().equals("left"))
                .singleElement()
                .satisfies(s -> {
                    assertThat(s.strips()).isEqualTo(strips);
                    assertThat(s.wasteSquareMetres()).isCloseTo(waste, within(1e-3));
                });
    }

    @Test
    void the_samples_do_not_conform_and_the_exit_code_says_so() {
        assertThat(exitCode).isEqualTo(ExitCode.NON_CONFORMING);
    }

    @ParameterizedTest
    @MethodSource("drops")
    void planes_have_the_figures_of_the_readme(ExpectedDrop drop) {
        CheckResult result = result(drop);

        assertThat(result.planes()).filteredOn(p -> p.curve().isEmpty()).hasSameSizeAs(drop.planes());
        for (ExpectedPlane expected : drop.planes()) {
            PlaneResult plane = plane(result, expected);
            String name = drop.folder() + ", " + expected.elements().get(0);
            assertThat(plane.pitchDegrees()).as(name).isCloseTo(expected.pitchDegrees(), AS_PRINTED);
            assertThat(plane.azimuthDegrees().orElseThrow()).as(name).isCloseTo(expected.azimuthDegrees(), AS_PRINTED);
            assertThat(plane.longestRunMetres()).as(name).isCloseTo(expected.runMetres(), AS_PRINTED);
            assertThat(plane.areaSquareMetres()).as(name).isCloseTo(expected.areaTrueSquareMetres(), AS_PRINTED);
            assertThat(plane.planAreaSquareMetres()).as(name).isCloseTo(expected.areaPlanSquareMetres(), AS_PRINTED);
            assertThat(plane.sheets()).as(name).extracting(s -> s.number()).contains(expected.strips());
            assertThat(plane.sheets()).as(name).allMatch(s -> s.number() <= expected.strips());
            PlaneResult.Sheet last = plane.sheets().get(plane.sheets().size() - 1);
            assertThat(last.u().lengthMetres()).as(name).isCloseTo(expected.lastStripMetres(), AS_PRINTED);
        }
    }

    @Test
    void the_barrel_of_the_tally_sheds_has_the_figures_of_the_readme() {
        assertThat(result(ExpectedDrops.tallySheds()).planes())
                .filteredOn(p -> p.curve().isPresent())
                .singleElement()
                .satisfies(p -> {
                    assertThat(p.elements()).extracting(e -> e.name()).containsExactly("Barrel roof shed 4");
                    assertThat(p.curve().orElseThrow().radiusMetres().orElseThrow())
                            .isCloseTo(8, AS_PRINTED);
                    assertThat(p.curve().orElseThrow().greatestPitchDegrees()).isCloseTo(22, AS_PRINTED);
                    assertThat(p.longestRunMetres()).isCloseTo(6.1436, AS_PRINTED);
                    assertThat(p.areaSquareMetres()).isCloseTo(62.6643, AS_PRINTED);
                    assertThat(p.planAreaSquareMetres()).isCloseTo(61.1358, AS_PRINTED);
                    assertThat(p.sheets()).hasSize(21);
                });
    }

    @ParameterizedTest
    @MethodSource("drops")
    void supports_and_spans_have_the_figures_of_the_readme(ExpectedDrop drop) {
        for (ExpectedPlane expected : drop.planes()) {
            PlaneResult plane = plane(result(drop), expected);
            if (expected.supports().isEmpty()) {
                assertThat(plane.supports()).isEmpty();
            }
            for (ExpectedSupports supports : expected.supports()) {
                assertThat(plane.supports().stream()
                                .mapToDouble(l -> l.vMetres())
                                .toArray())
                        .as(expected.elements().get(0))
                        .containsExactly(
                                supports.lines().stream()
                                        .mapToDouble(Double::doubleValue)
                                        .toArray(),
                                within(6e-4));
                assertThat(longest(plane, "end span")).isCloseTo(supports.longestEndSpan(), AS_PRINTED);
                assertThat(longest(plane, "internal span")).isCloseTo(supports.longestInternalSpan(), AS_PRINTED);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("drops")
    void edges_add_up_as_in_the_readme(ExpectedDrop drop) {
        Map<String, Double> found = new TreeMap<>();
        for (EdgeResult edge : result(drop).edges()) {
            found.merge(edge.kind(), edge.lengthMetres(), Double::sum);
        }
        assertThat(found.keySet()).isEqualTo(new TreeMap<>(drop.edgeTotals()).keySet());
        drop.edgeTotals()
                .forEach((kind, total) -> assertThat(found.get(kind)).as(kind).isCloseTo(total, within(2e-4)));
    }

    /** Rules that answer for the faults built into the samples. */
    private static final Map<String, String> RULES = Map.ofEntries(
            entry("clip load", "clip-load"),
            entry("internal span", "internal-span"),
            entry("end span", "end-span"),
            entry("pitch", "minimum-pitch"),
            entry("eave overhang", "overhang"),
            entry("ridge overhang", "overhang"),
            entry("unlapped length", "unlapped-length"),
            entry("missing supports", "supports-found"),
            entry("support too low", "supports-in-plane"),
            entry("proud of the supports", "nothing-proud"),
            entry("water in a pan", "drainage"),
            entry("wide penetration", "penetration-width"),
            entry("penetration near an edge", "penetration-clearance"),
            entry("penetration that locks sheets", "penetration-movement"),
            entry("water beside a penetration", "penetration-water"),
            entry("pitch after deflection", "pitch-after-deflection"),
            entry("pitch of laps", "end-lap-pitch"),
            entry("sliver", "least-strip"),
            entry("narrow flange", "support-flange"),
            entry("thin support", "support-thickness"),
            entry("metals of fixing and support", "contact-support"),
            entry("short lap of purlins", "purlin-lap"),
            entry("run-off from nobler metal", "run-off"),
            entry("run-off on bare zinc", "inert-run-off"),
            entry("other metal than the system's", "sheet-metal"),
            entry("clamped loads", "rib-clamps"),
            entry("load in an edge zone", "fixture-zone"),
            entry("metal of a load", "fixture-metal"),
            entry("work near an opening", "work-near-openings"),
            entry("span not walkable", "walkable-span"),
            entry("off the build-up", "depth-to-supports"),
            entry("radius", "curving-radius"),
            entry("flat crown", "flat-crown"),
            entry("pitch at the eave", "eave-pitch-of-curve"),
            entry("hollow", "sag"));

    @ParameterizedTest
    @MethodSource("drops")
    void the_faults_built_in_are_found_with_their_measure(ExpectedDrop drop) {
        List<Finding> found = result(drop).findings(Outcome.DOES_NOT_CONFORM);
        for (ExpectedFinding expected : drop.findings()) {
            String rule = RULES.get(expected.kind());
            if (rule != null) {
                assertThat(found)
                        .as(drop.folder() + ": " + expected)
                        .filteredOn(f -> f.rule().equals(rule))
                        .anySatisfy(f -> {
                            assertThat(planeElements(result(drop), f.plane())).contains(expected.subject());
                            expected.value()
                                    .ifPresent(v -> assertThat(inUnit(f, expected.unit()))
                                            .isCloseTo(v, AS_PRINTED));
                        });
            }
        }
    }

    @Test
    void the_wide_bay_is_found_once_between_the_grid_lines_where_the_purlin_is_missing() {
        assertThat(result(ExpectedDrops.kilnHall()).findings(Outcome.DOES_NOT_CONFORM))
                .filteredOn(f -> f.rule().equals("internal-span"))
                .singleElement()
                .satisfies(f -> assertThat(f.gridPlace()).isEqualTo("between C and D, between 1 and 2"));
    }

    /** The purlin hangs 12 mm lower than the other 142, and the plate is 8 mm thick. */
    @Test
    void the_low_purlin_and_the_plate_on_the_north_slope_are_found_once_each_where_they_are() {
        assertThat(result(ExpectedDrops.kilnHall()).findings(Outcome.DOES_NOT_CONFORM))
                .filteredOn(
                        f -> f.rule().equals("supports-in-plane") || f.rule().equals("nothing-proud"))
                .extracting(
                        Finding::rule,
                        f -> f.elements().get(0).name(),
                        f -> Math.round(inUnit(f, "m") * 1e4) / 1e4,
                        Finding::gridPlace)
                .containsExactly(
                        tuple("supports-in-plane", "Purlin N7 D-E", 0.012, "between D and E, between 2 and 3"),
                        tuple("nothing-proud", "Splice plate N4 B", 0.008, "on B, between 2 and 3"));
    }

    /** Half of 75.0715 is 37.5358; the nearest line is the one at 37.5, the 26th: 0.25, then 1.5 x 1 to 1.5 x 25. */
    @Test
    void the_long_slope_is_told_where_a_lap_could_go() {
        assertThat(result(ExpectedDrops.ropeWalk()).findings(Outcome.DOES_NOT_CONFORM))
                .filteredOn(f -> f.rule().equals("unlapped-length"))
                .singleElement()
                .satisfies(f -> assertThat(f.cure())
                        .endsWith("Laps on support line 26 would leave 37.50, 37.57 m from the eave up, the laps not"
                                + " added: the roof system states no end_lap."));
    }

    @Test
    void elements_without_a_shape_are_listed_as_unread_with_the_reason() {
        assertThat(result(ExpectedDrops.tallySheds()).unread())
                .extracting(u -> u.name())
                .containsExactly("Roof shed 3");
    }

    @Test
    void what_the_settings_leave_out_is_not_assessed_and_never_counted_as_conforming() {
        CheckResult result = result(ExpectedDrops.tallySheds());

        // Two of the sheds have supports; of the others supports-found tells it.
        assertThat(result.findings(Outcome.NOT_ASSESSED))
                .filteredOn(f -> f.rule().equals("clip-load"))
                .hasSize(2);
        assertThat(result.findings(Outcome.DOES_NOT_CONFORM))
                .filteredOn(f -> f.rule().equals("supports-found"))
                .hasSize(2)
                .allSatisfy(f -> assertThat(f.message()).contains("Fixing density by zone"));
        assertThat(result.conforming()).noneMatch(c -> c.rule().equals("clip-load"));
    }

    /** Wrong by what the README says: 12 - 5 degrees, and 61.4338 - 5.7074 m2. */
    @Test
    void stated_values_that_contradict_the_geometry_are_notes_and_name_the_mistake() {
        assertThat(result(ExpectedDrops.tallySheds()).findings(Outcome.DOES_NOT_CONFORM))
                .filteredOn(f -> f.rule().startsWith("stated-"))
                .allMatch(f -> f.severity() == Severity.NOTE && f.elements().size() == 1)
                .extracting(
                        Finding::rule,
                        f -> Math.round(f.measured().orElseThrow().value() * 1e4) / 1e4)
                .containsExactlyInAnyOrder(tuple("stated-pitch", 7.0), tuple("stated-area", 55.7264));
        assertThat(result(ExpectedDrops.tallySheds()).stated())
                .filteredOn(v -> v.quantity().equals("area"))
                .singleElement()
                .satisfies(v -> assertThat(v.remark()).contains("converted from square feet once more"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"kiln-hall", "lock-office", "cart-shed", "rope-walk"})
    void what_the_other_samples_state_agrees_with_their_bodies(String folder) {
        assertThat(ofFolder(folder).stated())
                .isNotEmpty()
                .allMatch(v -> v.verdict().equals("agrees"));
    }

    @Test
    void the_health_of_the_tally_sheds_lists_their_faults_by_importance() {
        assertThat(result(ExpectedDrops.tallySheds()).health())
                .extracting(l -> l.importance().label() + " " + l.kind() + " "
                        + l.items().size())
                .containsExactly(
                        "high unread 1",
                        "medium same-global-id 2",
                        "low no-storey 4",
                        "low no-true-north 0",
                        "low no-material 16");
    }

    @ParameterizedTest
    @MethodSource("drops")
    void every_element_of_a_plane_and_every_support_tells_how_it_was_read(ExpectedDrop drop) {
        CheckResult result = result(drop);
        Set<Integer> told =
                result.methods().stream().map(m -> m.element().stepId()).collect(Collectors.toSet());

        // Drawn as a surface on purpose, of which the upper side has to be assumed.
        assertThat(result.methods())
                .filteredOn(m -> m.element().name().equals("Loft roof"))
                .allMatch(m -> !m.closed() && m.basis().equals("assumed"));
        assertThat(result.methods())
                .filteredOn(m -> !m.element().name().equals("Loft roof"))
                .allMatch(m -> m.closed() && m.basis().equals("derived"));
        assertThat(result.planes().stream()
                        .flatMap(p -> Stream.concat(
                                p.elements().stream(),
                                p.supports().stream()
                                        .flatMap(l -> l.pieces().stream().map(piece -> piece.element()))))
                        .map(e -> e.stepId()))
                .allMatch(told::contains);
    }

    @Test
    void a_duplicate_global_id_is_noted() {
        assertThat(result(ExpectedDrops.tallySheds()).files().get(0).notes())
                .anySatisfy(n -> assertThat(n).containsIgnoringCase("GlobalId"));
    }

    private static CheckResult result(ExpectedDrop drop) {
        return ofFolder(drop.folder());
    }

    private static CheckResult ofFolder(String folder) {
        CheckResult result = RESULTS.get(folder);
        if (result == null) {
            throw new AssertionError("no result for " + folder);
        }
        return result;
    }

    private static PlaneResult plane(CheckResult result, ExpectedPlane expected) {
        return result.planes().stream()
                .filter(p ->
                        p.elements().stream().anyMatch(e -> expected.elements().contains(e.name())))
                .filter(p -> Math.abs(p.azimuthDegrees().orElse(0) - expected.azimuthDegrees()) < 1)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no plane of " + expected.elements()));
    }

    private static List<String> planeElements(CheckResult result, String plane) {
        return result.planes().stream()
                .filter(p -> p.id().equals(plane))
                .flatMap(p -> p.elements().stream())
                .map(e -> e.name())
                .toList();
    }

    private static double longest(PlaneResult plane, String kind) {
        return plane.spans().stream()
                .filter(s -> s.kind().equals(kind))
                .mapToDouble(s -> s.lengthMetres())
                .max()
                .orElse(0);
    }

    private static double inUnit(Finding finding, String unit) {
        double value = finding.measured().orElseThrow().value();
        String own = finding.measured().orElseThrow().unit();
        return own.equals("mm") && unit.equals("m") ? value / 1000 : value;
    }
}
