package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static runtrue.cli.FakeCheck.checked;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.drop.Drop;

class CheckCommandTest {
    @TempDir
    Path root;

    private final FakeCheck check = new FakeCheck();
    private Path drops;
    private Path output;

    @BeforeEach
    void two_drops() throws IOException {
        drops = root.resolve("drops");
        output = root.resolve("out");
        for (String name : List.of("east", "west")) {
            Files.createDirectories(drops.resolve(name));
            Files.writeString(drops.resolve(name).resolve("roof.ifc"), "x");
        }
    }

    @Test
    void results_go_to_a_folder_for_each_drop() {
        run("check", drops, "-o", output);

        assertThat(output.resolve("east/result.json")).hasContent("new");
        assertThat(output.resolve("west/result.json")).hasContent("new");
    }

    @Test
    void the_table_has_a_line_for_each_drop_and_the_total() {
        check.answer("east", () -> checked(12, 3, 2, 1));

        CommandRun run = run("check", drops, "-o", output);

        assertThat(run.out()).isEqualTo("""
                        Drop   Planes  Area m2  Conforms  Does not conform  Not assessed  Conceded  Unread
                        east        2   1234.6        12                 3             2         0       1
                        west        2   1234.6         4                 0             0         0       0
                        Total       4   2469.1        16                 3             2         0       1
                        Results: %s
                        """.formatted(output));
    }

    @ParameterizedTest
    @CsvSource({
        "4, 0, 0, 0, '', 0",
        "4, 1, 0, 0, '', 3",
        "4, 0, 1, 0, '', 4",
        "4, 0, 0, 1, '', 4",
        "4, 1, 1, 1, '', 3",
        "4, 1, 1, 1, never, 0",
        "4, 1, 0, 0, not-assessed, 0",
        "4, 1, 1, 0, not-assessed, 4",
        "4, 1, 1, 1, 'unread,not-assessed', 4",
        "4, 0, 1, 1, non-conforming, 0",
        "4, 1, 0, 0, NON-CONFORMING, 3",
    })
    void the_exit_code_follows_the_outcomes(int conforms, int not, int open, int unread, String failOn, int code) {
        check.answer("east", () -> checked(conforms, not, open, unread));

        CommandRun run = failOn.isEmpty()
                ? run("check", drops, "-o", output)
                : run("check", drops, "-o", output, "--fail-on", failOn);

        assertThat(run.exitCode()).isEqualTo(code);
    }

    @Test
    void a_drop_that_cannot_be_read_stops_no_other_and_keeps_its_earlier_results() throws IOException {
        Files.createDirectories(output.resolve("east"));
        Files.writeString(output.resolve("east/result.json"), "earlier");
        check.fail("east", CheckException.ofDrop("roof.ifc: not a STEP file", new IOException()));

        CommandRun run = run("check", drops, "-o", output);

        assertThat(run.exitCode()).isEqualTo(ExitCode.INCOMPLETE);
        assertThat(run.err()).contains("east: roof.ifc: not a STEP file").doesNotContain("Exception");
        assertThat(run.out()).containsPattern("(?m)^east +not read, see above$");
        assertThat(output.resolve("east/result.json")).hasContent("earlier");
        assertThat(output.resolve("west/result.json")).hasContent("new");
    }

    @Test
    void no_drop_that_can_be_read_is_a_failure() {
        check.fail("east", CheckException.ofDrop("bad", new IOException()));
        check.fail("west", CheckException.ofDrop("bad", new IOException()));

        assertThat(run("check", drops, "-o", output, "--fail-on", "never").exitCode())
                .isEqualTo(ExitCode.FAILED);
    }

    @Test
    void a_fault_of_the_program_says_version_and_input_and_asks_for_a_report() {
        check.fail("east", new IllegalStateException("ring not closed"));

        CommandRun run = run("check", drops, "-o", output);

        assertThat(run.exitCode()).isEqualTo(ExitCode.FAILED);
        assertThat(run.err())
                .contains("Runtrue failed on drop east, roof.ifc")
                .contains("Please report it")
                .contains("Runtrue " + Version.number() + ", Java ")
                .contains("ring not closed");
        assertThat(run.out()).containsPattern("(?m)^west +2 ");
    }

    @Test
    void a_wrong_rule_set_ends_the_run_with_its_message_only() {
        DropCheck.Factory factory = options -> {
            throw CheckException.ofOptions("rules/roof.yaml:14: no such fact 'pich'", new IOException());
        };

        CommandRun run = CommandRun.of(factory, "check", drops, "-o", output);

        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).isEqualTo("rules/roof.yaml:14: no such fact 'pich'\n");
        assertThat(run.out()).isEmpty();
    }

    @Test
    void a_wrong_rule_set_found_late_ends_the_run_too() {
        check.fail("east", CheckException.ofOptions("rules/roof.yaml:14: no such fact", new IOException()));

        assertThat(run("check", drops, "-o", output).exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(check.drops).hasSize(1);
    }

    @Test
    void a_path_that_does_not_exist_is_bad_usage() {
        CommandRun run = run("check", root.resolve("nowhere"), "-o", output);

        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("nowhere: no such file or folder").hasLineCount(1);
        assertThat(output).doesNotExist();
    }

    @Test
    void a_folder_without_models_among_others_counts_as_unread() throws IOException {
        Path empty = Files.createDirectories(root.resolve("empty"));

        CommandRun run = run("check", drops, empty, "-o", output);

        assertThat(run.exitCode()).isEqualTo(ExitCode.INCOMPLETE);
        assertThat(run.err()).contains("empty: holds no .ifc");
        assertThat(output.resolve("west/result.json")).exists();
    }

    @Test
    void an_output_folder_that_cannot_be_written_is_told_before_any_work() throws IOException {
        Files.writeString(output, "a file is in the way");

        CommandRun run = run("check", drops, "-o", output);

        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("results cannot be written there").hasLineCount(1);
        assertThat(check.drops).isEmpty();
    }

    @Test
    void files_named_together_are_one_drop() {
        run("check", drops.resolve("east/roof.ifc"), drops.resolve("west/roof.ifc"), "-o", output);

        assertThat(check.drops).extracting(Drop::name).containsExactly("east-and-others");
    }

    @Test
    void options_reach_the_check() {
        run(
                "check",
                drops,
                "-o",
                output,
                "--rules",
                "r.yaml",
                "--system",
                "wide",
                "--settings",
                "s.yaml",
                "--set",
                "site.wind=1.2kPa",
                "--threads",
                "3");

        assertThat(check.options).singleElement().satisfies(options -> {
            assertThat(options.rules()).contains(Path.of("r.yaml"));
            assertThat(options.system()).contains("wide");
            assertThat(options.settings()).contains(Path.of("s.yaml"));
            assertThat(options.overrides()).isEqualTo(Map.of("site.wind", "1.2kPa"));
            assertThat(options.threads()).isEqualTo(3);
        });
    }

    @ParameterizedTest
    @CsvSource({
        "--threads, 0, '--threads is 0; allowed 1 to 512'",
        "--threads, many, \"'many' is not an int\"",
        "--fail-on, sometimes, \"'sometimes' is none of never, non-conforming, not-assessed, unread\"",
        "--fail-on, 'never,unread', \"'never' cannot be combined\"",
        "--sytem, wide, 'Unknown option'",
    })
    void bad_usage_gets_one_message_and_the_way_to_the_help(String option, String value, String message) {
        CommandRun run = run("check", drops, "-o", output, option, value);

        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains(message.replace("\"", "")).contains("See: runtrue check --help");
        assertThat(check.drops).isEmpty();
    }

    @Test
    void quiet_leaves_errors_and_the_table() {
        CommandRun loud = run("check", drops, "-o", output);
        CommandRun quiet = run("check", drops, "-o", output, "--quiet");

        assertThat(loud.err()).contains("1/2 east: roof.ifc");
        assertThat(quiet.err()).isEmpty();
        assertThat(quiet.out()).isEqualTo(loud.out());
    }

    private CommandRun run(Object... args) {
        return CommandRun.of(check, args);
    }
}
