package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The same drops give the same result.json and drawings, byte for byte, on any number of threads and in any country. */
class DeterminismTest {
    private static final Path SAMPLES =
            Path.of(System.getProperty("runtrue.root", "../..")).resolve("sample-models");

    private static final Locale OWN = Locale.getDefault();

    private static Map<String, String> expected = Map.of();

    @TempDir
    Path output;

    @BeforeAll
    static void one_thread_in_no_country(@TempDir Path output) throws IOException {
        expected = results(output, 1, Locale.ROOT);
        assertThat(expected).hasSizeGreaterThanOrEqualTo(10);
    }

    @AfterAll
    static void home_again() {
        Locale.setDefault(OWN);
    }

    /** Turkish has a dotless i, German a decimal comma, Thai and Arabic may write other digits. */
    @ParameterizedTest
    @CsvSource({"1, tr-TR", "2, tr-TR", "4, tr-TR", "1, de-DE", "2, de-DE", "4, de-DE", "2, th-TH-u-nu-thai", "4, ar-EG"
    })
    void results_depend_neither_on_threads_nor_on_the_country(int threads, String country) throws IOException {
        assertThat(results(output, threads, Locale.forLanguageTag(country))).isEqualTo(expected);
    }

    private static Map<String, String> results(Path output, int threads, Locale country) throws IOException {
        Locale.setDefault(country);
        CommandRun run = CommandRun.of(
                options -> ModelCheck.with(options, Instant.EPOCH),
                "check",
                SAMPLES,
                "--output",
                output,
                "--threads",
                threads,
                "--quiet");
        assertThat(run.exitCode()).isEqualTo(ExitCode.NON_CONFORMING);
        Map<String, String> results = new TreeMap<>();
        try (Stream<Path> drops = Files.list(output)) {
            for (Path drop : drops.toList()) {
                for (Path file : texts(drop)) {
                    results.put(output.relativize(file).toString(), Files.readString(file));
                }
            }
        }
        return results;
    }

    private static List<Path> texts(Path drop) throws IOException {
        try (Stream<Path> files = Files.list(drop)) {
            return files.filter(f -> f.toString().matches(".*\\.(json|svg)")).toList();
        }
    }
}
