package runtrue.geometryserver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runtrue.shape.ElementShapes;
import runtrue.shape.Shape;
import runtrue.step.StepFile;

class SecondEngineTest {
    private final GeometryServer server = GeometryServer.bundled();

    @AfterEach
    void close() {
        server.close();
    }

    private ElementShapes engine(ElementShapes first, EngineUse use) {
        return SecondEngine.of(first, use, server, Comparison.Tolerance.standard(), c -> {});
    }

    @Test
    void an_element_that_the_built_in_reader_cannot_read_is_read_by_the_program() {
        Platform.assumeExecutable();
        try (StepFile file =
                ModelText.file(ModelText.slab(100, "0000000000000000000100", "#15") + ModelText.REVOLVED)) {
            ElementShapes.Reading reading = ModelText.slabs(file, engine(ModelText.readsNothing(), EngineUse.FILL_IN));
            Shape.Body body = (Shape.Body) reading.shapes().get(0);
            assertThat(body.engine()).isEqualTo("IfcOpenShell 0.5.0-dev");
            assertThat(body.closed()).isTrue();
            // Pappus: area times the way of its centre, a quarter of a circle of 1 m; chords take a little off.
            double volume = 0.4 * 0.2 * Math.PI / 2;
            assertThat(Measured.of(body).volume().getAsDouble()).isCloseTo(volume, within(0.01 * volume));
            assertThat(reading.notes())
                    .containsExactly(
                            "test.ifc: 1 element was read by IfcOpenShell 0.5.0-dev because the built-in reader"
                                    + " could not: #100 (IfcSlab) \"Slab\" 0000000000000000000100.");
        }
    }

    @Test
    void nothing_is_started_when_the_built_in_reader_reads_all(@TempDir Path folder) {
        Path trace = folder.resolve("started");
        GeometryServer traced = GeometryServer.named(Platform.script(folder, "touch '" + trace + "'\n"));
        try (StepFile file = ModelText.file(ModelText.slab(100, "0000000000000000000100", "#15") + ModelText.BLOCK)) {
            ElementShapes.Reading reading = ModelText.slabs(
                    file,
                    SecondEngine.of(
                            ElementShapes.builtIn(),
                            EngineUse.FILL_IN,
                            traced,
                            Comparison.Tolerance.standard(),
                            c -> {}));
            assertThat(((Shape.Body) reading.shapes().get(0)).builtIn()).isTrue();
            assertThat(reading.notes()).isEmpty();
            assertThat(trace).doesNotExist();
        }
    }

    @Test
    void all_elements_are_the_programs_when_that_is_asked_for() {
        Platform.assumeExecutable();
        try (StepFile file = ModelText.file(ModelText.slab(100, "0000000000000000000100", "#15") + ModelText.BLOCK)) {
            ElementShapes.Reading reading = ModelText.slabs(file, engine(ElementShapes.builtIn(), EngineUse.SECOND));
            Shape.Body body = (Shape.Body) reading.shapes().get(0);
            assertThat(body.engine()).isEqualTo("IfcOpenShell 0.5.0-dev");
            assertThat(body.faces()).hasSize(6);
            assertThat(Measured.of(body).volume().getAsDouble()).isCloseTo(2.4, within(1e-6));
            assertThat(reading.notes()).singleElement().asString().contains("1 element was read by IfcOpenShell");
        }
    }

    @Test
    void engines_that_agree_are_said_to() {
        Platform.assumeExecutable();
        try (StepFile file = ModelText.file(ModelText.slab(100, "0000000000000000000100", "#15") + ModelText.BLOCK)) {
            ElementShapes.Reading reading = ModelText.slabs(file, engine(ElementShapes.builtIn(), EngineUse.COMPARE));
            assertThat(((Shape.Body) reading.shapes().get(0)).builtIn()).isTrue();
            assertThat(reading.notes())
                    .containsExactly(
                            "test.ifc: 1 element was read by both the built-in reader and IfcOpenShell 0.5.0-dev;"
                                    + " 0 differ by more than 1.0 % in volume, 1.0 % in upward area or 0.2 degrees in mean pitch.");
        }
    }

    @Test
    void an_element_on_which_the_engines_differ_is_listed_with_both_values() {
        Platform.assumeExecutable();
        String slab = ModelText.slab(100, "0000000000000000000100", "#15");
        try (StepFile file = ModelText.file(slab + ModelText.BLOCK);
                StepFile thicker = ModelText.file(slab + ModelText.BLOCK.replace("200.);", "210.);"))) {
            // A first engine that reads another model, in which the slab is 210 mm thick instead of 200.
            ElementShapes first = (elements, tolerances, origin) -> ModelText.slabs(thicker, ElementShapes.builtIn());
            ElementShapes.Reading reading = ModelText.slabs(file, engine(first, EngineUse.COMPARE));
            assertThat(reading.notes())
                    .contains("test.ifc: Engines differ at #100 (IfcSlab) \"Slab\" 0000000000000000000100: volume"
                            + " 2.520 m3 here, 2.400 m3 there.");
        }
    }

    @Test
    void a_slab_far_from_the_origin_keeps_its_millimetres() {
        Platform.assumeExecutable();
        String far = """
                #20=IFCCARTESIANPOINT((2600000123.,1200000456.,450000.));
                #21=IFCAXIS2PLACEMENT3D(#20,$,$);
                #22=IFCLOCALPLACEMENT($,#21);
                """;
        try (StepFile file =
                ModelText.file(far + ModelText.slab(100, "0000000000000000000100", "#22") + ModelText.BLOCK)) {
            Shape.Body body = (Shape.Body) ModelText.slabs(file, engine(ElementShapes.builtIn(), EngineUse.SECOND))
                    .shapes()
                    .get(0);
            double least = body.faces().stream()
                    .flatMap(f -> f.outline().stream())
                    .mapToDouble(p -> p.getX())
                    .min()
                    .getAsDouble();
            assertThat(least).isCloseTo(2_600_000.123 - 2, within(1e-6));
        }
    }

    @Test
    void a_file_of_another_schema_is_not_given_to_the_program_that_comes_along() {
        try (StepFile file =
                ModelText.file("IFC4", ModelText.slab(100, "0000000000000000000100", "#15") + ModelText.BLOCK)) {
            ElementShapes.Reading reading = ModelText.slabs(file, engine(ModelText.readsNothing(), EngineUse.SECOND));
            assertThat(reading.shapes()).singleElement().isInstanceOf(Shape.Unread.class);
            assertThat(reading.notes())
                    .containsExactly(
                            "test.ifc: IfcOpenShell 0.5.0-dev knows IFC2X3 alone and was not asked for 1 elements"
                                    + " of this IFC4 file; --geometry-program names another.");
        }
    }
}
