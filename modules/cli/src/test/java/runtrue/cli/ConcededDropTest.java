package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runtrue.result.CheckResult;
import runtrue.result.ConcessionResult;
import runtrue.result.Finding;
import runtrue.result.Outcome;
import runtrue.result.json.ResultJson;

/** Concessions beside the models of a drop, on a copy of a sample. */
class ConcededDropTest {
    private static final Path SAMPLE = Path.of(System.getProperty("runtrue.root", "../.."), "sample-models/rope-walk");

    @TempDir
    Path root;

    private Path drop;

    @BeforeEach
    void copy_of_a_sample() throws IOException {
        drop = Files.createDirectories(root.resolve("rope-walk"));
        try (Stream<Path> files = Files.list(SAMPLE)) {
            for (Path file : files.toList()) {
                Files.copy(file, drop.resolve(file.getFileName()));
            }
        }
    }

    private CommandRun check(String day) {
        return CommandRun.of(
                options -> ModelCheck.with(options, Instant.parse(day + "T12:00:00Z")),
                "check",
                drop,
                "--output",
                root.resolve("out"));
    }

    private CheckResult result() throws IOException {
        return ResultJson.read(root.resolve("out/rope-walk/result.json"));
    }

    private void concede(List<Finding> findings, String terms) throws IOException {
        StringBuilder text = new StringBuilder("concessions:\n");
        for (Finding finding : findings) {
            text.append("- {finding: ").append(finding.id()).append(", by: R. Aldous, why: RFI 27, ");
            text.append(terms).append("}\n");
        }
        Files.writeString(drop.resolve("concessions.yaml"), text);
    }

    @Test
    void accepted_findings_are_conceded_until_their_day_and_then_come_back() throws IOException {
        check("2027-01-01");
        List<Finding> breaches = result().findings(Outcome.DOES_NOT_CONFORM);
        assertThat(breaches).isNotEmpty();
        concede(breaches, "until: 2027-03-31, up_to: 1 km".replace("1 km", "1000 m"));

        CommandRun before = check("2027-03-31");
        assertThat(result().findings(Outcome.CONCEDED)).hasSameSizeAs(breaches);
        assertThat(result().findings(Outcome.DOES_NOT_CONFORM)).isEmpty();
        assertThat(before.exitCode()).isNotEqualTo(ExitCode.NON_CONFORMING);

        CommandRun after = check("2027-04-01");
        assertThat(result().findings(Outcome.DOES_NOT_CONFORM)).hasSameSizeAs(breaches);
        assertThat(result().concessions()).extracting(ConcessionResult::state).containsOnly("expired");
        assertThat(after.exitCode()).isEqualTo(ExitCode.NON_CONFORMING);
        assertThat(after.err()).contains("concessions.yaml:2: concession expired. Expired on 2027-03-31.");
    }

    @Test
    void an_unreadable_file_of_concessions_fails_its_drop_with_one_message() throws IOException {
        Files.writeString(drop.resolve("concessions.yaml"), "concessions: [{finding: x}]\n");

        CommandRun run = check("2027-01-01");

        assertThat(run.err()).contains("concessions.yaml:1:").doesNotContain("Exception");
        assertThat(run.exitCode()).isEqualTo(ExitCode.FAILED);
    }
}
