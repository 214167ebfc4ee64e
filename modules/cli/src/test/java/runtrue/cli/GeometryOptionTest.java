package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runtrue.geometryserver.EngineUse;
import runtrue.result.CheckResult;
import runtrue.result.json.ResultJson;

class GeometryOptionTest {
    private static final Path ROOT = Path.of(System.getProperty("runtrue.root", "../.."));

    /** An IFC2X3 model, without a fault and without unread elements. */
    private static final Path CART_SHED = ROOT.resolve("sample-models/cart-shed");

    @TempDir
    Path output;

    private CommandRun check(Object... options) {
        return CommandRun.of(
                given -> ModelCheck.with(given, Instant.EPOCH),
                Stream.concat(Stream.of("check", CART_SHED, "--output", output), Stream.of(options))
                        .toArray());
    }

    private CheckResult result() throws IOException {
        return ResultJson.read(output.resolve("cart-shed/result.json"));
    }

    private static void assumeExecutable() {
        assumeTrue(
                System.getProperty("os.name", "").startsWith("Linux")
                        && System.getProperty("os.arch", "").equals("amd64"),
                "the geometry program that comes along was tried on Linux x86-64 only");
    }

    @Test
    void without_the_option_the_second_engine_fills_in() {
        FakeCheck check = new FakeCheck();
        CommandRun.of(check, "check", CART_SHED, "--output", output);
        assertThat(check.options).singleElement().satisfies(options -> {
            assertThat(options.geometry()).isEqualTo(EngineUse.FILL_IN);
            assertThat(options.geometryProgram()).isEmpty();
        });
    }

    @Test
    void a_word_that_is_not_known_is_refused_with_those_that_are() {
        CommandRun run = CommandRun.of(new FakeCheck(), "check", CART_SHED, "--geometry", "both");
        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("'both' is none of built-in, fill-in, second, compare");
    }

    @Test
    void the_second_engine_alone_gives_the_same_roof_and_each_element_names_it() throws IOException {
        assumeExecutable();
        check("--geometry", "built-in");
        CheckResult builtIn = result();
        check("--geometry", "second");
        CheckResult second = result();
        assertThat(second.counts()).isEqualTo(builtIn.counts());
        assertThat(second.planes()).hasSameSizeAs(builtIn.planes()).isNotEmpty();
        for (int i = 0; i < builtIn.planes().size(); i++) {
            var here = builtIn.planes().get(i);
            var there = second.planes().get(i);
            assertThat(there.areaSquareMetres()).isEqualTo(here.areaSquareMetres(), within(1e-3));
            assertThat(there.pitchDegrees()).isEqualTo(here.pitchDegrees(), within(1e-3));
            assertThat(there.supports()).hasSameSizeAs(here.supports());
            assertThat(there.elements())
                    .isNotEmpty()
                    .allSatisfy(e -> assertThat(e.evidence()).endsWith("; shape read by IfcOpenShell 0.5.0-dev"));
        }
        assertThat(builtIn.planes().get(0).elements())
                .noneMatch(e -> e.evidence().contains("IfcOpenShell"));
        assertThat(builtIn.methods()).isNotEmpty().allMatch(m -> m.engine().equals("built-in reader"));
        assertThat(second.methods())
                .hasSameSizeAs(builtIn.methods())
                .allMatch(m -> m.engine().equals("IfcOpenShell 0.5.0-dev"));
        assertThat(second.files().get(0).notes())
                .anyMatch(n -> n.contains("read by IfcOpenShell 0.5.0-dev in place of the built-in reader"));
    }

    @Test
    void a_comparison_is_printed_and_kept_in_the_result() throws IOException {
        assumeExecutable();
        CommandRun run = check("--geometry", "compare");
        assertThat(run.err())
                .containsPattern(
                        "elements read by both geometry engines: \\d+, of these differing by more than 1.0 % in volume,"
                                + " 1.0 % in upward area or 0.2 degrees in mean pitch: 0");
        assertThat(result().files().get(0).notes())
                .anyMatch(n -> n.contains("elements were read by both the built-in reader and IfcOpenShell"));
    }

    @Test
    void a_program_that_is_missing_is_a_note_and_the_check_goes_on() throws IOException {
        CommandRun run = check("--geometry", "second", "--geometry-program", output.resolve("nowhere"));
        assertThat(run.exitCode()).isEqualTo(ExitCode.CONFORMING);
        CheckResult result = result();
        assertThat(result.planes()).isNotEmpty();
        assertThat(result.unread()).isEmpty();
        assertThat(result.files().get(0).notes())
                .anyMatch(n -> n.startsWith("geometry program nowhere cannot be started: there is no file"));
    }

    @Test
    void completion_knows_the_words() {
        assertThat(CommandRun.of(new FakeCheck(), "completion").out())
                .contains("'--geometry'", "'--geometry-program'", "(\"built-in\" \"fill-in\" \"second\" \"compare\")");
    }
}
