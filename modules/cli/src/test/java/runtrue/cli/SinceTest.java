package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runtrue.result.Outcome;
import runtrue.result.change.ChangeKind;
import runtrue.result.change.Changes;
import runtrue.result.json.ResultJson;

/** A drop against an earlier check of it. */
class SinceTest {
    private static final Path ROPE_WALK =
            Path.of(System.getProperty("runtrue.root", "../.."), "sample-models/rope-walk");

    @TempDir
    Path root;

    private CommandRun check(String day, Object... more) {
        Object[] words = new Object[4 + more.length];
        words[0] = "check";
        words[1] = ROPE_WALK;
        words[2] = "--output";
        words[3] = root.resolve("out");
        System.arraycopy(more, 0, words, 4, more.length);
        return CommandRun.of(options -> ModelCheck.with(options, Instant.parse(day + "T12:00:00Z")), words);
    }

    private Optional<Changes> changes() throws IOException {
        return ResultJson.read(root.resolve("out/rope-walk/result.json")).changes();
    }

    private static boolean isAboutLength(Changes.OfFinding finding) {
        return finding.rule().equals("unlapped-length");
    }

    /** The rope walk has sheets that grow more than their clips let them; a lighter colour cures that. */
    @Test
    void a_cured_finding_is_gone_and_its_issue_closed() throws IOException {
        check("2027-01-01");
        assertThat(changes()).isEmpty();

        CommandRun cured = check("2027-02-01", "--set", "temperature_range=40K", "--since", root.resolve("out"));

        Changes changes = changes().orElseThrow();
        assertThat(changes.earlierRunStamp()).isEqualTo("2027-01-01T12:00:00Z");
        assertThat(changes.basis()).singleElement().asString().contains("temperature_range: 75 K, now 40 K");
        assertThat(changes.findings())
                .filteredOn(SinceTest::isAboutLength)
                .singleElement()
                .satisfies(f -> {
                    assertThat(f.kind()).isEqualTo(ChangeKind.GONE);
                    assertThat(f.now()).contains(Outcome.CONFORMS);
                });
        assertThat(cured.err()).containsPattern("0 new, 0 changed, \\d+ gone");

        check("2027-03-01", "--since", root.resolve("out/rope-walk/result.json"));
        assertThat(changes().orElseThrow().findings())
                .filteredOn(SinceTest::isAboutLength)
                .extracting(Changes.OfFinding::kind)
                .containsExactly(ChangeKind.NEW);
        assertThat(Files.readString(root.resolve("out/rope-walk/findings.csv"))).contains("unlapped");
    }

    @Test
    void a_folder_that_is_not_there_stops_the_check() {
        CommandRun run = check("2027-01-01", "--since", root.resolve("nowhere"));
        assertThat(run.err())
                .contains("nowhere: no such folder or file. --since takes the output of an earlier check.");
        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void nothing_to_compare_with_and_a_result_of_another_format_are_said() throws IOException {
        Path other = Files.createDirectories(root.resolve("other"));
        assertThat(check("2027-01-01", "--since", other).err())
                .contains("holds no result of this drop; nothing is compared");
        Files.writeString(other.resolve("result.json"), "{\"format\": \"runtrue-result/1\"}");
        CommandRun run = check("2027-01-01", "--since", other);
        assertThat(run.err()).contains("nothing is compared").contains("runtrue-result/1");
        assertThat(run.exitCode()).isEqualTo(ExitCode.NON_CONFORMING);
        assertThat(changes()).isEmpty();
    }
}
