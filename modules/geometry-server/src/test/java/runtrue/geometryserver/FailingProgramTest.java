package runtrue.geometryserver;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import runtrue.ifc.IfcModel;
import runtrue.shape.ElementShapes;
import runtrue.shape.Shape;
import runtrue.step.StepFile;

/** A program that is missing, dies, hangs or speaks nonsense costs the elements that it was asked for, and no more. */
class FailingProgramTest {
    /** Number, length of what follows, length of the text, text, filled up to a multiple of four. */
    private static final String GREETING =
            "printf '\\000\\377\\000\\000\\034\\000\\000\\000\\026\\000\\000\\000IfcOpenShell-0.5.0-dev\\000\\000'\n";

    /** There is more to come; then an element whose GlobalId has two thousand million letters. */
    private static final String ABSURD_LENGTH = "printf '\\004\\377\\000\\000\\004\\000\\000\\000\\001\\000\\000\\000"
            + "\\003\\377\\000\\000\\100\\000\\000\\000\\144\\000\\000\\000\\377\\377\\377\\177'\n";

    private static final Limits SHORT =
            new Limits(Duration.ofSeconds(2), Duration.ofSeconds(3), Duration.ofSeconds(30), 4, 2048, 1 << 24);

    @TempDir
    Path folder;

    @AfterEach
    void no_program_is_left_running() {
        assertThat(ProcessHandle.current().children()).isEmpty();
    }

    static Stream<Arguments> badPrograms() {
        return Stream.of(
                Arguments.of("dies at once", "exit 3\n", "stopped"),
                Arguments.of("never says a word", "exec sleep 600\n", "did not answer in time and was ended"),
                Arguments.of("waits for a child that hangs", "sleep 600\nexit 0\n", "did not answer in time"),
                Arguments.of(
                        "speaks nonsense", "echo 'Hello, I am a program of another kind.'\nexec cat >/dev/null\n", ""),
                Arguments.of("dies when it gets a file", GREETING + "exit 1\n", "stopped"),
                Arguments.of("hangs when it gets a file", GREETING + "exec sleep 600\n", "did not answer in time"),
                Arguments.of(
                        "sends nonsense after a greeting",
                        GREETING + "echo 'nonsense, nonsense, nonsense'\nexec cat >/dev/null\n",
                        ""),
                Arguments.of("sends an absurd length", GREETING + ABSURD_LENGTH + "exec cat >/dev/null\n", ""));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("badPrograms")
    void a_program_that_fails_leaves_the_element_unread_and_a_note(String what, String script, String message) {
        GeometryServer server = new GeometryServer(Program.named(Platform.script(folder, script)), SHORT);
        ElementShapes.Reading reading = filledIn(server);
        assertThat(reading.shapes())
                .singleElement()
                .isInstanceOfSatisfying(
                        Shape.Unread.class,
                        unread -> assertThat(unread.reason())
                                .startsWith("Not read, for the sake of this test. geometry program stand-in ")
                                .contains(message));
        assertThat(reading.notes())
                .isNotEmpty()
                .allSatisfy(note -> assertThat(note).startsWith("test.ifc: geometry program stand-in "));
        server.close();
    }

    @Test
    void a_missing_program_is_a_note() {
        GeometryServer server = new GeometryServer(Program.named(folder.resolve("nowhere")), SHORT);
        assertThat(filledIn(server).notes())
                .containsExactly("test.ifc: geometry program nowhere cannot be started: there is no file "
                        + folder.resolve("nowhere") + ".");
    }

    @Test
    void a_platform_without_an_executable_has_none() {
        assertThat(Program.resource("Linux", "aarch64")).isEmpty();
        assertThat(Program.resource("SunOS", "sparcv9")).isEmpty();
    }

    @Test
    void each_platform_that_has_an_executable_finds_it_in_the_library() {
        for (String[] platform : new String[][] {
            {"Linux", "amd64"},
            {"Linux", "i386"},
            {"Windows 11", "amd64"},
            {"Windows 10", "x86"},
            {"Mac OS X", "x86_64"}
        }) {
            String resource = Program.resource(platform[0], platform[1]).orElseThrow();
            assertThat(org.ifcopenshell.IfcGeomServerClient.class.getResource(resource))
                    .as(platform[0])
                    .isNotNull();
        }
    }

    @ParameterizedTest
    @MethodSource("firstDeaths")
    void a_program_that_died_is_started_again(String death) throws Exception {
        Platform.assumeExecutable();
        Path own = Files.createDirectory(folder.resolve("own"));
        String command = Program.bundled().command(own, 2048, 60);
        Path died = folder.resolve("died");
        String script = "if [ ! -e '" + died + "' ]; then touch '" + died + "'; " + death + " exit 1; fi\nexec "
                + command + "\n";
        GeometryServer server = new GeometryServer(Program.named(Platform.script(folder, script)), SHORT);
        ElementShapes.Reading reading = filledIn(server);
        assertThat(reading.shapes()).singleElement().isInstanceOf(Shape.Body.class);
        assertThat(reading.notes()).anySatisfy(note -> assertThat(note).contains("stopped"));
        server.close();
    }

    static Stream<String> firstDeaths() {
        return Stream.of("", GREETING.strip() + ";");
    }

    /** A mapped item that maps itself sends the real program into an endless recursion. */
    @Test
    void an_element_that_the_program_cannot_stand_costs_no_other() {
        Platform.assumeExecutable();
        String poison = """
                #150=IFCSLAB('0000000000000000000150',#30,'Poison',$,$,#15,#151,$,.ROOF.);
                #151=IFCPRODUCTDEFINITIONSHAPE($,$,(#152));
                #152=IFCSHAPEREPRESENTATION(#2,'Body','MappedRepresentation',(#153));
                #153=IFCMAPPEDITEM(#154,#156);
                #154=IFCREPRESENTATIONMAP(#11,#155);
                #155=IFCSHAPEREPRESENTATION(#2,'Body','MappedRepresentation',(#153));
                #156=IFCCARTESIANTRANSFORMATIONOPERATOR3D($,$,#10,$,$);
                """;
        try (StepFile file = ModelText.file(ModelText.slab(100, "0000000000000000000100", "#15")
                        + ModelText.slab(110, "0000000000000000000110", "#15")
                        + ModelText.slab(120, "0000000000000000000120", "#15")
                        + poison
                        + ModelText.BLOCK);
                GeometryServer server = new GeometryServer(Program.bundled(), SHORT)) {
            IfcModel model = IfcModel.of(file);
            GeometryServer.Answer answer = server.meshes(model, model.all("IfcSlab"));
            assertThat(answer.meshes().keySet()).containsExactly(100, 110, 120);
            assertThat(answer.missing().keySet()).containsExactly(150);
            assertThat(answer.missing().get(150)).endsWith(" at it");
        }
    }

    @Test
    void a_program_that_wants_more_memory_than_it_may_have_is_a_note() {
        Platform.assumeExecutable();
        Limits tight =
                new Limits(SHORT.start(), SHORT.silence(), SHORT.total(), SHORT.restarts(), 10, SHORT.fileBytes());
        try (GeometryServer server = new GeometryServer(Program.bundled(), tight)) {
            ElementShapes.Reading reading = filledIn(server);
            assertThat(reading.shapes()).singleElement().isInstanceOf(Shape.Unread.class);
            assertThat(reading.notes()).anySatisfy(note -> assertThat(note).contains("stopped"));
        }
    }

    @Test
    void what_was_unpacked_is_the_users_own_and_is_removed() throws Exception {
        Platform.assumeExecutable();
        Path made = Program.folder();
        Path command = Path.of(Program.bundled().command(made, 100, 10));
        assertThat(command).startsWith(made).isExecutable();
        List<Path> all;
        try (Stream<Path> walk = Files.walk(made)) {
            all = walk.toList();
        }
        assertThat(all)
                .hasSize(3)
                .allSatisfy(path -> assertThat(Files.getPosixFilePermissions(path))
                        .noneMatch(
                                p -> p.name().equals("GROUP_WRITE") || p.name().equals("OTHERS_WRITE")));
        assertThat(Files.getPosixFilePermissions(made))
                .hasSize(3)
                .allMatch(p -> p.name().startsWith("OWNER"));
        Program.remove(made);
        assertThat(made).doesNotExist();
    }

    private static ElementShapes.Reading filledIn(GeometryServer server) {
        try (StepFile file = ModelText.file(ModelText.slab(100, "0000000000000000000100", "#15") + ModelText.BLOCK)) {
            return ModelText.slabs(
                    file,
                    SecondEngine.of(
                            ModelText.readsNothing(),
                            EngineUse.FILL_IN,
                            server,
                            Comparison.Tolerance.standard(),
                            c -> {}));
        }
    }
}
