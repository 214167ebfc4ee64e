package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runtrue.rules.RuleSets;

/** {@code runtrue rules} from the command line to its text and exit code. */
class RulesCommandTest {
    private static final Path SAMPLES = Path.of(System.getProperty("runtrue.root"), "sample-models");

    private static final String ON_BASE = "ours 1.0.0 on long-run-sheets "
            + RuleSets.bundled("long-run-sheets").version();

    private static final String OURS = """
            rule_set: ours
            version: "1.0.0"
            title: Ours
            extends: long-run-sheets.yaml
            changes:
              rules:
                minimum-pitch: {at least: 0.5 deg, source: Our own practice}
            switched_off:
              stated-area: filled in later
            """;

    @TempDir
    Path folder;

    private Path ours;

    @BeforeEach
    void writeOurs() throws IOException {
        ours = Files.writeString(folder.resolve("ours.yaml"), OURS);
    }

    private static CommandRun run(Object... args) {
        Object[] all = new Object[args.length + 1];
        all[0] = "rules";
        System.arraycopy(args, 0, all, 1, args.length);
        return CommandRun.of(options -> ModelCheck.with(options, Instant.EPOCH), all);
    }

    @Test
    void rules_are_listed_with_limit_source_and_place() {
        CommandRun run = run();
        assertThat(run.exitCode()).isZero();
        assertThat(run.out().lines().map(String::strip))
                .containsSequence(
                        "minimum-pitch  critical, for each plane: Minimum pitch",
                        "when !plane.curved",
                        "plane.pitch",
                        "at least system.minimum_pitch (2 deg)",
                        "Source: Least pitch of the roof system");
    }

    @Test
    void what_an_extending_rule_set_changes_and_switches_off_is_listed_with_its_place() {
        String out = run("--rules", ours).out();
        assertThat(out)
                .contains(ON_BASE + ", without stated-area")
                .contains("changed at " + ours + ":7")
                .contains("stated-area (Stated area against the geometry): filled in later [" + ours + ":9]");
    }

    @Test
    void all_examples_of_the_rules_of_the_program_hold() {
        CommandRun run = run("--test");
        assertThat(run.out()).contains("0 of them do not hold; 0 rules lack one");
        assertThat(run.exitCode()).isZero();
    }

    @Test
    void an_example_that_does_not_hold_is_told_with_its_place_and_gives_exit_code_3() {
        CommandRun run = run("--test", "--rules", ours);
        assertThat(run.out())
                .contains(
                        "minimum-pitch, does not conform, example 1: stated is \"does not conform\", the rule says \"conforms\"")
                .contains("It is changed at " + ours + ":7:");
        assertThat(run.exitCode()).isEqualTo(3);
    }

    @Test
    void a_rule_that_lacks_an_example_gives_exit_code_4() throws IOException {
        Files.writeString(ours, OURS.substring(0, OURS.indexOf("changes:")) + """
                rules:
                  - id: steep
                    title: Steep
                    severity: note
                    for: plane
                    require: plane.least_pitch < quantity("60 deg")
                    source: Ours
                    message: steep
                    examples: {conforms: [{plane.least_pitch: 30 deg}]}
                """);
        CommandRun run = run("--test", "--rules", ours);
        assertThat(run.out()).contains("Rule steep has no example of: does not conform, not assessed");
        assertThat(run.exitCode()).isEqualTo(4);
    }

    @Test
    void a_rule_set_that_is_wrong_gives_exit_code_2_and_the_place() throws IOException {
        Files.writeString(ours, OURS.replace("minimum-pitch", "minimum-pich"));
        CommandRun run = run("--rules", ours);
        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err())
                .contains(
                        "ours.yaml:7:5: there is no rule \"minimum-pich\" to change; did you mean \"minimum-pitch\"?");
    }

    @Test
    void one_rule_is_explained_with_its_tables_and_examples() {
        String out = run("--rule", "end-span").out();
        assertThat(out)
                .contains("tables.span, mm by thickness and place")
                .contains("thickness 0.6 mm: end span: 1400 mm, internal span: 1700 mm")
                .contains("system.thickness, in m: base metal thickness; here 0.0006 m [roof system kestrel-500]")
                .contains("not assessed [");
    }

    @Test
    void an_unknown_rule_offers_the_near_one() {
        CommandRun run = run("--rule", "end-spam");
        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("There is no rule \"end-spam\"; did you mean \"end-span\"?");
    }

    /** The figures are those of the sample's description and of the rule files, not of a run. */
    @Test
    void a_finding_is_explained_with_every_fact_and_where_it_comes_from() {
        CommandRun run = run("--finding", "unlapped-length-c7a501fa05", SAMPLES.resolve("rope-walk"));
        assertThat(run.exitCode()).isZero();
        assertThat(run.out())
                .contains("settings.temperature_range = 75 K: coldest to hottest sheet [")
                .contains("rope-walk/runtrue.yaml:15]")
                .contains(
                        "system.clip_travel = 0.04 m: movement that a clip lets the sheet make [roof system kestrel-500")
                .contains("defined.free_expansion = system.expansion * settings.temperature_range = 0.0009 [")
                .contains("= 44.444 m")
                .contains("it governs")
                .contains("margin -30.627 m");
    }

    @Test
    void a_finding_that_no_drop_has_is_bad_usage() {
        CommandRun run = run("--finding", "end-span-0000000000", SAMPLES.resolve("cart-shed"));
        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains("No drop given here has a finding \"end-span-0000000000\"");
    }

    @Test
    void a_finding_needs_its_drop() {
        assertThat(run("--finding", "end-span-0000000000").err()).contains("--finding needs PATH");
    }

    @Test
    void a_drop_can_name_its_rule_set_and_change_it() throws IOException {
        Path drop = Files.createDirectory(folder.resolve("drop"));
        Files.copy(SAMPLES.resolve("rope-walk/rope-walk.ifc"), drop.resolve("rope-walk.ifc"));
        Files.writeString(drop.resolve("site.yaml"), OURS);
        Files.writeString(drop.resolve("runtrue.yaml"), """
                system: kestrel-500
                rule_set: site.yaml
                changes:
                  rules:
                    minimum-pitch: {at least: 40 deg, source: The architect wants it steep}
                """);
        String out = run(drop).out();
        assertThat(out)
                .contains(ON_BASE + ", changed by the drop's settings, without stated-area")
                .contains("at least 40 deg");
        CommandRun check = CommandRun.of(
                options -> ModelCheck.with(options, Instant.EPOCH),
                "check",
                "-q",
                drop,
                "--output",
                folder.resolve("out"));
        assertThat(check.exitCode()).isEqualTo(ExitCode.NON_CONFORMING);
        assertThat(Files.readString(folder.resolve("out/drop/result.json")))
                .contains("changed by the drop's settings")
                .contains("the profile needs 40 deg");
    }

    @Test
    void a_misspelt_change_in_the_settings_of_a_drop_is_told_with_its_place() throws IOException {
        Path drop = Files.createDirectory(folder.resolve("drop"));
        Files.writeString(drop.resolve("runtrue.yaml"), "switched_off:\n  minimum-pich: never\n");
        assertThat(run(drop).err())
                .contains(
                        "runtrue.yaml:2:3: there is no rule \"minimum-pich\" to switch off; did you mean \"minimum-pitch\"?");
    }

    @Test
    void needs_are_written_as_an_information_delivery_specification() throws IOException {
        Path file = folder.resolve("needed.ids");
        CommandRun run = run("--ids", file);
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).contains("Written: " + file);
        assertThat(Files.readString(file))
                .contains("xmlns=\"http://standards.buildingsmart.org/IDS\"")
                .contains("ifcVersion=\"IFC2X3 IFC4 IFC4X3_ADD2\"")
                .contains("For A roof was found");
    }

    @Test
    void a_file_that_cannot_be_written_gives_exit_code_1() {
        CommandRun run = run("--ids", folder.resolve("none/needed.ids"));
        assertThat(run.exitCode()).isEqualTo(ExitCode.FAILED);
        assertThat(run.err()).contains("cannot be written");
    }
}
