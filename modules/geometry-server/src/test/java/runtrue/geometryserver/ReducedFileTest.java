package runtrue.geometryserver;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;
import runtrue.step.StepFile;

class ReducedFileTest {
    private static final int NO_LIMIT = 1 << 28;

    private static byte[] reduced(IfcModel model, List<IfcEntity> elements) throws ProgramException {
        ReducedFile file = new ReducedFile(model, new Voids(model), NO_LIMIT);
        for (IfcEntity element : elements) {
            assertThat(file.add(element)).isTrue();
        }
        return file.bytes();
    }

    @ParameterizedTest
    @ValueSource(strings = {"gable-oblique-mm.ifc", "gable-early-schema.ifc", "eleven-slab-roof-ifc2x3.ifc"})
    void it_is_a_STEP_file_with_the_same_records_under_the_same_numbers(String name) throws Exception {
        try (StepFile whole = StepFile.open(SharedFiles.of("models").resolve(name))) {
            IfcModel model = IfcModel.of(whole);
            List<IfcEntity> slabs = model.all("IfcSlab");
            try (StepFile part = StepFile.of("reduced.ifc", reduced(model, slabs))) {
                assertThat(part.header().schemas()).containsExactly("IFC2X3");
                assertThat(part.notes()).isEmpty();
                assertThat(part.size()).isBetween(slabs.size(), whole.size() - 1);
                List<String> globalIds = IfcModel.of(part).all("IfcSlab").stream()
                        .map(slab -> slab.text("GlobalId"))
                        .toList();
                assertThat(globalIds)
                        .isEqualTo(slabs.stream()
                                .map(slab -> slab.text("GlobalId"))
                                .toList());
                for (String keyword : part.keywords()) {
                    for (int id : part.idsOf(keyword)) {
                        // Parts of an aggregation that are not in the file are not in its list either.
                        if (!keyword.equals("IFCRELAGGREGATES")) {
                            assertThat(part.instance(id)).isEqualTo(whole.instance(id));
                        }
                    }
                }
            }
        }
    }

    /** Opening and all: the program sees no difference. */
    @ParameterizedTest
    @ValueSource(strings = {"gable-oblique-mm.ifc", "eleven-slab-roof-ifc2x3.ifc", "flat-roof-container.ifc"})
    void the_program_makes_the_same_meshes_of_it_as_of_the_whole_file(String name) throws Exception {
        Platform.assumeExecutable();
        try (StepFile file = StepFile.open(SharedFiles.of("models").resolve(name));
                GeometryServer server = GeometryServer.bundled()) {
            IfcModel model = IfcModel.of(file);
            List<IfcEntity> slabs = model.all("IfcSlab");
            var parts = server.meshes(model, slabs).meshes();
            var whole = Bundled.meshes(SharedFiles.of("models").resolve(name));
            assertThat(parts).isNotEmpty();
            assertThat(parts.keySet())
                    .isEqualTo(slabs.stream()
                            .map(IfcEntity::id)
                            .filter(whole::containsKey)
                            .collect(Collectors.toSet()));
            parts.forEach((id, mesh) -> {
                ProgramMesh same = Objects.requireNonNull(whole.get(id));
                // The order in which openings are cut, and so that of the points, hangs on nothing in the file.
                assertThat(points(mesh)).isEqualTo(points(same));
                assertThat(mesh.corners()).hasSameSizeAs(same.corners());
                assertThat(triangles(mesh).volume()).isCloseTo(triangles(same).volume(), withinPercentage(1e-4));
                assertThat(triangles(mesh).upwardArea())
                        .isCloseTo(triangles(same).upwardArea(), withinPercentage(1e-4));
                assertThat(mesh.matrix()).isEqualTo(same.matrix());
            });
        }
    }

    private static Set<List<Float>> points(ProgramMesh mesh) {
        Set<List<Float>> points = new HashSet<>();
        for (int i = 0; i < mesh.xyz().length; i += 3) {
            points.add(List.of(mesh.xyz()[i], mesh.xyz()[i + 1], mesh.xyz()[i + 2]));
        }
        return points;
    }

    private static TriangleMesh triangles(ProgramMesh mesh) {
        return TriangleMesh.of(mesh.xyz(), mesh.corners(), mesh.matrix(), 1);
    }

    @Test
    void an_element_that_leads_to_a_missing_record_is_refused() throws Exception {
        try (StepFile file = ModelText.file(ModelText.slab(100, "0000000000000000000100", "#15"))) {
            IfcModel model = IfcModel.of(file);
            ReducedFile reduced = new ReducedFile(model, new Voids(model), NO_LIMIT);
            assertThatThrownBy(() -> reduced.add(model.entity(100)))
                    .isInstanceOf(ProgramException.class)
                    .hasMessageContaining("#200");
            assertThat(new String(reduced.bytes(), StandardCharsets.US_ASCII)).doesNotContain("IFCSLAB");
        }
    }

    @Test
    void an_element_whose_placement_goes_round_in_a_circle_is_refused() throws Exception {
        String circle = "#21=IFCLOCALPLACEMENT(#22,#11);\n#22=IFCLOCALPLACEMENT(#21,#11);\n";
        try (StepFile file =
                ModelText.file(circle + ModelText.slab(100, "0000000000000000000100", "#21") + ModelText.BLOCK)) {
            IfcModel model = IfcModel.of(file);
            ReducedFile reduced = new ReducedFile(model, new Voids(model), NO_LIMIT);
            assertThatThrownBy(() -> reduced.add(model.entity(100))).isInstanceOf(ProgramException.class);
        }
    }

    @Test
    void an_element_that_does_not_fit_leaves_the_file_as_it_was() throws Exception {
        try (StepFile file = ModelText.file(ModelText.slab(100, "0000000000000000000100", "#15") + ModelText.BLOCK)) {
            IfcModel model = IfcModel.of(file);
            int project = new ReducedFile(model, new Voids(model), NO_LIMIT).bytes().length;
            ReducedFile reduced = new ReducedFile(model, new Voids(model), project);
            assertThat(reduced.add(model.entity(100))).isFalse();
            assertThat(reduced.bytes()).hasSize(project);
        }
    }

    @Test
    void elements_that_do_not_fit_into_one_file_go_in_several() {
        Platform.assumeExecutable();
        String slabs = IntStream.range(0, 6)
                .mapToObj(i -> ModelText.slab(100 + 10 * i, "00000000000000000001%02d".formatted(10 * i), "#15"))
                .collect(Collectors.joining());
        Limits all = Limits.standard();
        Limits small = new Limits(all.start(), all.silence(), all.total(), all.restarts(), all.memoryMegabytes(), 2300);
        try (StepFile file = ModelText.file(slabs + ModelText.BLOCK);
                GeometryServer server = new GeometryServer(Program.bundled(), small)) {
            IfcModel model = IfcModel.of(file);
            GeometryServer.Answer answer = server.meshes(model, model.all("IfcSlab"));
            assertThat(answer.missing()).isEmpty();
            assertThat(answer.meshes().keySet()).containsExactly(100, 110, 120, 130, 140, 150);
        }
    }

    @Test
    void text_beyond_ASCII_is_written_as_the_standard_says() throws Exception {
        try (StepFile file = ModelText.file(ModelText.slab(100, "0000000000000000000100", "#15") + ModelText.BLOCK)) {
            IfcModel model = IfcModel.of(file);
            try (StepFile part = StepFile.of("reduced.ifc", reduced(model, model.all("IfcSlab")))) {
                assertThat(IfcModel.of(part).entity(1).text("Name")).isEqualTo("Caf\u00e9 'd' \\");
            }
        }
    }

    /** Reads a whole file by the program, without reducing it. */
    private static final class Bundled {
        static Map<Integer, ProgramMesh> meshes(Path path) throws Exception {
            Path folder = Program.folder();
            List<ProgramMesh> meshes = new ArrayList<>();
            try {
                Limits limits = Limits.standard();
                String command = Program.bundled().command(folder, limits.memoryMegabytes(), 120);
                new Session(command, limits, limits.total()).run(Files.readAllBytes(path), meshes::add);
            } finally {
                Program.remove(folder);
            }
            return meshes.stream().collect(Collectors.toMap(ProgramMesh::stepId, Function.identity()));
        }
    }
}
