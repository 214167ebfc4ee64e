package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.rules.SettingsFiles;

/** Compares whole screens with text files. {@code -Dupdate.golden} writes them anew; look at the difference. */
class HelpTest {
    private static final Path GOLDEN =
            Path.of(System.getProperty("runtrue.root", "../.."), "modules/cli/src/test/resources/runtrue/cli");

    @ParameterizedTest
    @CsvSource({
        "--help, help.txt",
        "help check, help-check.txt",
        "help rules, help-rules.txt",
        "help completion, help-completion.txt"
    })
    void the_help_is_as_reviewed(String args, String file) throws IOException {
        CommandRun run = CommandRun.of(new FakeCheck(), (Object[]) args.split(" "));

        assertThat(run.exitCode()).isEqualTo(ExitCode.CONFORMING);
        if (System.getProperty("update.golden") != null) {
            Files.writeString(GOLDEN.resolve(file), run.out());
        }
        assertThat(run.out()).isEqualTo(Files.readString(GOLDEN.resolve(file)));
    }

    @Test
    void help_of_a_command_is_the_same_both_ways() {
        assertThat(CommandRun.of(new FakeCheck(), "check", "--help").out())
                .isEqualTo(CommandRun.of(new FakeCheck(), "help", "check").out());
    }

    /** An example that is refused teaches nothing. */
    @Test
    void settings_in_the_examples_are_known() {
        Matcher set = Pattern.compile("--set ([a-z._]+)=(\\S+)")
                .matcher(CommandRun.of(new FakeCheck(), "help", "check").out());
        assertThat(set.find()).isTrue();
        do {
            Map<String, String> one = Map.of(set.group(1), set.group(2));
            assertThatCode(() -> SettingsFiles.load(Optional.empty(), Optional.empty(), one))
                    .doesNotThrowAnyException();
        } while (set.find());
    }

    @ParameterizedTest
    @CsvSource({"CONFORMING, 0", "FAILED, 1", "USAGE, 2", "NON_CONFORMING, 3", "INCOMPLETE, 4"})
    void every_exit_code_stands_in_the_help(String name, int code) throws ReflectiveOperationException {
        assertThat(ExitCode.class.getDeclaredField(name).getInt(null)).isEqualTo(code);
        assertThat(CommandRun.of(new FakeCheck(), "help", "check").out()).containsPattern("(?m)^  " + code + "   \\S");
        assertThat(ExitCode.class.getDeclaredFields())
                .filteredOn(f -> !f.isSynthetic())
                .hasSize(5);
    }

    @Test
    void the_version_comes_from_the_build() {
        assertThat(CommandRun.of(new FakeCheck(), "--version").out())
                .matches("Runtrue \\d+\\.\\d+\\.\\d+\\S*\nJava \\S+\n");
    }

    @Test
    void no_command_is_bad_usage() {
        CommandRun run = CommandRun.of(new FakeCheck());

        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("No command given.").contains("runtrue --help");
    }

    @Test
    void a_mistyped_command_offers_the_near_one() {
        CommandRun run = CommandRun.of(new FakeCheck(), "chek", "x");

        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("Did you mean: runtrue check");
    }

    @Test
    void completion_knows_commands_options_and_their_values() {
        CommandRun run = CommandRun.of(new FakeCheck(), "completion");

        assertThat(run.exitCode()).isEqualTo(ExitCode.CONFORMING);
        assertThat(run.out())
                .startsWith("#!/usr/bin/env bash")
                .contains("complete -F _complete_runtrue")
                .contains("--fail-on")
                .contains("non-conforming");
    }
}
