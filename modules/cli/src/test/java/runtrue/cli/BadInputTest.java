package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.result.CheckResult;
import runtrue.result.Outcome;
import runtrue.result.json.ResultJson;

/**
 * What a person can get wrong, the whole way from the command to the results. A sample model is damaged in one place at a
 * time. Each fault gives one message that names the file and the line or the instance, the exit code that the help
 * states, and never a stack trace.
 */
class BadInputTest {
    private static final Path ROOT = Path.of(System.getProperty("runtrue.root", "../.."));

    @TempDir
    Path work;

    private String sound = "";
    private Path output;

    @BeforeAll
    static void program_at_home() {
        System.setProperty("runtrue.home", ROOT.toString());
    }

    @AfterAll
    static void program_anywhere() {
        System.clearProperty("runtrue.home");
    }

    @BeforeEach
    void sound_model() throws IOException {
        sound = Files.readString(ROOT.resolve("sample-models/cart-shed/cart-shed.ifc"));
        output = work.resolve("out");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "^.*$ | a letter | this is not a STEP file",
                "^.*$ | '' | the file is empty",
                "(?<=Shed roof',).*$ | '' | line 70: #63 begins at line 70 and is not finished where the file ends",
                "Shed roof' | Shed roof | line 70: a string is not closed",
                "'IFC2X3' | 'AP214' | schema AP214 is not read; export the model as IFC2X3, IFC4 or IFC4X3",
                "#63= | #99999999999= | line 70: instance number #99999999999 is larger than 2147483647",
            })
    void a_file_that_is_no_sound_model_fails_with_one_message(String what, String by, String message)
            throws IOException {
        CommandRun run = check(drop("shed", damaged(what, by)));

        assertThat(run.exitCode()).isEqualTo(ExitCode.FAILED);
        assertThat(run.err()).contains("model.ifc").contains(message);
        assertThat(run.err().lines().filter(l -> l.contains(message))).hasSize(1);
        assertNoStackTrace(run);
        assertThat(output.resolve("shed")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "#62,#59, | #62,#99999, | Representation of #63 (IfcSlab) refers to #99999, which is not in the file",
                "#62,#59, | #99998,#59, | ObjectPlacement of #63 (IfcSlab) refers to #99998, which is not in the file",
                "#62=IFCLOCALPLACEMENT\\(#39 | #62=IFCLOCALPLACEMENT(#62 | #62 (IfcLocalPlacement) is placed relative"
                        + " to itself",
                "DIFFERENCE.,#52,#56 | DIFFERENCE.,#57,#56 | #57 (IfcBooleanClippingResult) has itself as its operand",
                "-0.5,-0.5,10. | -0.5,NaN,10. | line 67, #60 IFCCARTESIANPOINT: \"NAN\" is no value",
                "-0.5,-0.5,10. | -0.5,-1.#QNAN,10. | line 67, #60 IFCCARTESIANPOINT: \"-1.#QNAN\" is not a number",
                "-0.5,-0.5,10. | -0.5,1.E400,10. | line 67, #60 IFCCARTESIANPOINT: the number 1.E400 is too large",
                "-0.5,-0.5,10. | -0.5,1.E30,10. | #62 (IfcLocalPlacement) lies more than a million kilometres from"
                        + " the origin",
                "30.5,12.5 | 1.E25,12.5 | coordinates lie more than 100 000 km from the origin",
            })
    void an_element_that_cannot_be_read_is_listed_with_the_reason_and_not_passed_as_conforming(
            String what, String by, String message) throws IOException {
        CommandRun run = check(drop("shed", damaged(what, by)));

        // The slab is the only roof of the model; without it the rule that a roof be found is not met.
        assertThat(run.exitCode()).isEqualTo(ExitCode.NON_CONFORMING);
        assertNoStackTrace(run);
        CheckResult result = result("shed");
        assertThat(result.unread()).singleElement().satisfies(u -> {
            assertThat(u.file()).isEqualTo("model.ifc");
            assertThat(u.stepId()).isEqualTo(63);
            assertThat(u.reason()).contains(message);
        });
        assertThat(result.findings(Outcome.NOT_ASSESSED))
                .anySatisfy(f -> assertThat(f.reason()).contains(message));
    }

    @Test
    void one_bad_purlin_leaves_the_roof_and_the_other_purlins_read() throws IOException {
        CommandRun run = check(drop("shed", damaged("#84,#80,", "#84,#99999,")));

        assertThat(run.exitCode()).isEqualTo(ExitCode.INCOMPLETE);
        assertThat(result("shed").planes()).hasSize(1);
        assertThat(result("shed").unread())
                .singleElement()
                .satisfies(u -> assertThat(u.reason()).contains("Representation of #85 (IfcMember) refers to #99999"));
    }

    @Test
    void a_global_id_given_twice_is_noted_with_both_elements() throws IOException {
        check(drop("shed", damaged("3J6vsDbxyuPxeI2_kO2XaX", "2JGSQ5gRWpZ8lCHknGl2D5")));

        assertThat(result("shed").files().get(0).notes())
                .contains("GlobalId 2JGSQ5gRWpZ8lCHknGl2D5 is shared by #92 (IfcMember), #99 (IfcMember).");
    }

    @Test
    void a_roof_without_any_members_is_laid_out_and_its_missing_supports_are_found() throws IOException {
        CommandRun run = check(drop("shed", damaged("#\\d+=IFCMEMBER\\([^\\n]*\\n", "")));

        assertThat(run.exitCode()).isEqualTo(ExitCode.NON_CONFORMING);
        assertThat(result("shed").planes())
                .singleElement()
                .satisfies(p -> assertThat(p.supports()).isEmpty());
        assertThat(result("shed").findings(Outcome.DOES_NOT_CONFORM))
                .anySatisfy(f -> assertThat(f.rule()).isEqualTo("supports-found"));
        assertThat(result("shed").conforming()).noneMatch(c -> c.rule().contains("span"));
    }

    @Test
    void a_name_that_is_not_encoded_as_the_standard_asks_does_not_stop_the_reading() throws IOException {
        Path folder = Files.createDirectories(work.resolve("shed"));
        byte[] latin = sound.replace("Shed roof", "Sch\u00fcrdach").getBytes(StandardCharsets.ISO_8859_1);
        Files.write(folder.resolve("model.ifc"), latin);

        CommandRun run = check(folder);

        assertNoStackTrace(run);
        assertThat(result("shed").planes())
                .singleElement()
                .satisfies(p ->
                        assertThat(p.elements().get(0).name()).startsWith("Sch").endsWith("rdach"));
    }

    @Test
    void a_drop_that_fails_leaves_the_other_s_results_and_its_own_earlier_ones() throws IOException {
        drop("good", sound);
        drop("bad", sound.substring(0, sound.length() / 2));
        Files.createDirectories(output.resolve("bad"));
        Files.writeString(output.resolve("bad/result.json"), "earlier");

        CommandRun run = check(work);

        assertThat(run.exitCode()).isEqualTo(ExitCode.INCOMPLETE);
        assertThat(run.err()).contains("bad: model.ifc, line ").contains("not finished where the file ends");
        assertThat(run.out()).containsPattern("(?m)^bad +not read, see above$");
        assertThat(output.resolve("bad/result.json")).hasContent("earlier");
        assertThat(result("good").planes()).hasSize(1);
        assertThat(output.resolve("good/quantities.xlsx")).exists();
        assertThat(output.resolve("good/non-conformances.xlsx")).exists();
    }

    @Test
    void a_wrong_settings_file_stops_its_own_drop_only() throws IOException {
        drop("good", sound);
        Files.writeString(drop("bad", sound).resolve("runtrue.yaml"), "no_such_setting: 1 m\n");

        CommandRun run = check(work);

        assertThat(run.err()).contains("runtrue.yaml:1").contains("no_such_setting");
        assertThat(run.out()).containsPattern("(?m)^bad +not read, see above$");
        assertThat(result("good").planes()).hasSize(1);
    }

    @Test
    void a_slab_whose_record_is_broken_counts_as_not_read() throws IOException {
        Path folder = drop("shed", sound.replaceFirst("(?m)^(#\\d+=IFCSLAB\\(.*)\\.ROOF\\.\\);", "$1?ROOF);"));

        CommandRun run = check(folder);

        assertNoStackTrace(run);
        assertThat(run.exitCode()).isEqualTo(ExitCode.NON_CONFORMING);
        assertThat(result("shed").unread())
                .singleElement()
                .satisfies(u -> assertThat(u.reason()).contains("cannot be read"));
    }

    @Test
    void a_file_of_a_drop_that_fails_is_listed_while_the_others_are_judged() throws IOException {
        Path folder = drop("shed", sound);
        Files.writeString(folder.resolve("steel.ifc"), "no model");

        CommandRun run = check(folder);

        assertThat(run.err()).contains("steel.ifc: this is not a STEP file");
        assertThat(result("shed").planes()).hasSize(1);
        assertThat(result("shed").files())
                .anySatisfy(f -> assertThat(f.notes()).anyMatch(n -> n.contains("not a STEP file")));
    }

    @Test
    void a_folder_without_models_is_bad_usage() throws IOException {
        Path empty = Files.createDirectories(work.resolve("empty"));

        CommandRun run = check(empty);

        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains(empty + " holds no .ifc or .ifczip file");
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 1000})
    void an_archive_that_is_damaged_or_unpacks_beyond_all_bounds_is_refused(int kind) throws IOException {
        Path folder = Files.createDirectories(work.resolve("shed"));
        byte[] archive =
                kind == 2 ? archive(sound) : archive(" ".repeat(100_000).repeat(kind));
        Files.write(
                folder.resolve("model.ifczip"), kind == 2 ? Arrays.copyOf(archive, archive.length / kind) : archive);

        CommandRun run = check(folder);

        assertThat(run.exitCode()).isEqualTo(ExitCode.FAILED);
        assertThat(run.err())
                .contains("model.ifczip")
                .contains(kind == 2 ? "not a readable zip archive" : "unpacks to more than 200 times its packed size");
        assertNoStackTrace(run);
    }

    private static byte[] archive(String content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            zip.putNextEntry(new ZipEntry("model.ifc"));
            zip.write(content.getBytes(StandardCharsets.US_ASCII));
            zip.closeEntry();
        }
        return bytes.toByteArray();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "(?m)^rules:.*$ | 'rules: [' | not readable as YAML",
                "measure: plane.pitch | measure: plane.pich | unknown fact \"plane.pich\"; did you mean"
                        + " \"plane.pitch\"?",
                "at least: system.minimum_pitch | 'at least: \"3\"' | \"3\" has no unit; known units: mm, cm, m",
            })
    void a_rule_set_with_a_fault_is_refused_with_its_line_before_anything_is_written(
            String what, String by, String message) throws IOException {
        Path rules = work.resolve("ours.yaml");
        String bundled = Files.readString(ROOT.resolve("rules/rule-sets/long-run-sheets.yaml"));
        String faulty = bundled.replaceFirst(what, by);
        assertThat(faulty).isNotEqualTo(bundled);
        Files.writeString(rules, faulty);

        CommandRun run = check(drop("shed", sound), "--rules", rules.toString());

        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).containsPattern("ours\\.yaml:\\d+:\\d+: ").contains(message);
        assertNoStackTrace(run);
        assertThat(output.resolve("shed")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "--rules, ours.yaml, ours.yaml: no such file",
        "--settings, ours.yaml, ours.yaml: no such file",
        "--system, ours.yaml, ours.yaml: no such file",
        "--system, nosuch, 'nosuch: no roof system of that name. Known: dunlin-400, kestrel-500'",
        "--set, nonsense=1, unknown setting \"nonsense\"",
        "--set, building_height=7, \"7\" has no unit",
    })
    void an_option_that_names_nothing_known_is_bad_usage(String option, String value, String message)
            throws IOException {
        CommandRun run = check(drop("shed", sound), option, value);

        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains(message);
        assertNoStackTrace(run);
    }

    @Test
    void an_output_folder_with_a_file_in_its_way_is_bad_usage_and_the_file_stays() throws IOException {
        Files.writeString(output, "earlier");

        CommandRun run = check(drop("shed", sound));

        assertThat(run.exitCode()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err()).contains(output + ": results cannot be written there");
        assertNoStackTrace(run);
        assertThat(output).hasContent("earlier");
    }

    private String damaged(String what, String by) {
        String damaged = sound.replaceFirst("(?s)" + what, by);
        if (what.startsWith("#\\d+")) {
            damaged = sound.replaceAll(what, by);
        }
        assertThat(damaged).as("the damage is done").isNotEqualTo(sound);
        return damaged;
    }

    private Path drop(String name, String model) throws IOException {
        Path folder = Files.createDirectories(work.resolve(name));
        Files.writeString(folder.resolve("model.ifc"), model);
        return folder;
    }

    private CommandRun check(Path path, String... options) {
        Object[] words = new Object[options.length + 4];
        words[0] = "check";
        words[1] = path;
        words[2] = "--output";
        words[3] = output;
        System.arraycopy(options, 0, words, 4, options.length);
        return CommandRun.of(given -> ModelCheck.with(given, Instant.EPOCH), words);
    }

    private CheckResult result(String drop) throws IOException {
        return ResultJson.read(output.resolve(drop).resolve("result.json"));
    }

    private static void assertNoStackTrace(CommandRun run) {
        assertThat(run.err() + run.out()).doesNotContain("Exception").doesNotContain("\tat ");
    }
}
