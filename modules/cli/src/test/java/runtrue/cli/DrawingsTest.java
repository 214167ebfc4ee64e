package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.result.CheckResult;
import runtrue.result.json.ResultJson;

/** The drawings of the sample drops show neither more nor less than their results. */
class DrawingsTest {
    private static final Path SAMPLES =
            Path.of(System.getProperty("runtrue.root", "../..")).resolve("sample-models");

    @TempDir
    static Path output;

    @BeforeAll
    static void all_samples_are_checked() {
        CommandRun.of(
                options -> ModelCheck.with(options, Instant.EPOCH), "check", SAMPLES, "--output", output, "--quiet");
    }

    @ParameterizedTest
    @CsvSource({"cart-shed, 1", "kiln-hall, 1", "lock-office, 1", "rope-walk, 1", "tally-sheds, 4"})
    void every_plane_edge_sheet_and_support_is_drawn_once(String drop, int drawings) throws IOException {
        CheckResult result = ResultJson.read(output.resolve(drop).resolve("result.json"));
        List<String> drawn = drawings(output.resolve(drop));
        assertThat(drawn).hasSize(drawings);
        String all = String.join("", drawn);
        assertThat(count(all, "plane")).isEqualTo(result.planes().size());
        assertThat(count(all, "edge [a-z-]+")).isEqualTo(result.edges().size());
        assertThat(count(all, "sheet"))
                .isEqualTo(result.planes().stream()
                        .mapToInt(p -> p.sheets().size())
                        .sum());
        assertThat(count(all, "support"))
                .isEqualTo(result.planes().stream()
                        .mapToInt(p -> p.supports().size())
                        .sum());
        assertThat(count(all, "penetration"))
                .isEqualTo(result.planes().stream()
                        .mapToInt(p -> p.penetrations().size())
                        .sum());
    }

    private static List<String> drawings(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(f -> f.toString().endsWith(".svg"))
                    .sorted()
                    .map(DrawingsTest::text)
                    .toList();
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static long count(String svg, String kind) {
        return Pattern.compile("class=\"" + kind + "\"").matcher(svg).results().count();
    }
}
