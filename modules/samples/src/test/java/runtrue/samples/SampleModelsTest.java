package runtrue.samples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import runtrue.samples.StepText.Instance;

class SampleModelsTest {
    static Stream<Map.Entry<String, String>> files() {
        return SampleModels.all().entrySet().stream();
    }

    @Test
    void writes_the_same_bytes_every_time(@TempDir Path first, @TempDir Path second) throws IOException {
        WriteSamples.main(new String[] {first.toString()});
        WriteSamples.main(new String[] {second.toString()});
        assertThat(ifcFiles(first)).isEqualTo(ifcFiles(second)).hasSize(7);
    }

    @Test
    void committed_files_are_what_the_writer_writes() throws IOException {
        assertThat(ifcFiles(Repository.root().resolve("sample-models"))).isEqualTo(SampleModels.all());
    }

    @ParameterizedTest
    @MethodSource("files")
    void every_reference_points_to_an_instance(Map.Entry<String, String> file) {
        Map<String, Instance> instances = StepText.instances(file.getValue());
        assertThat(instances).hasSizeGreaterThan(50);
        assertThat(instances.values().stream().flatMap(instance -> instance.references().stream()))
                .hasSizeGreaterThan(50)
                .allMatch(instances::containsKey);
    }

    @ParameterizedTest
    @MethodSource("files")
    void parentheses_balance_in_every_instance(Map.Entry<String, String> file) {
        assertThat(StepText.instances(file.getValue()).values()).allSatisfy(instance -> {
            String skeleton = instance.skeleton();
            assertThat(skeleton.chars().filter(c -> c == '(').count())
                    .isEqualTo(skeleton.chars().filter(c -> c == ')').count());
        });
    }

    @ParameterizedTest
    @MethodSource("files")
    void text_is_printable_ascii_between_line_feeds(Map.Entry<String, String> file) {
        assertThat(file.getValue().chars()).allMatch(c -> c == '\n' || (c >= ' ' && c <= '~'));
    }

    @Test
    void global_ids_are_valid_and_unique_but_for_the_intended_one() {
        List<Instance> rooted = SampleModels.all().values().stream()
                .flatMap(text -> StepText.instances(text).values().stream())
                .filter(instance -> instance.globalId().isPresent())
                .toList();
        Map<String, Long> uses = rooted.stream()
                .map(Instance::globalId)
                .flatMap(Optional::stream)
                .collect(Collectors.groupingBy(id -> id, Collectors.counting()));
        assertThat(uses.keySet()).allMatch(id -> id.matches("[0-3][0-9A-Za-z_$]{21}"));
        List<Instance> repeated = rooted.stream()
                .filter(instance -> uses.getOrDefault(instance.globalId().orElseThrow(), 0L) > 1)
                .toList();
        assertThat(repeated).hasSize(2).allMatch(instance -> instance.entity().equals("IFCMEMBER"));
        assertThat(repeated.get(0).attributes()).contains("'Purlin 1.1'");
        assertThat(repeated.get(1).attributes()).contains("'Purlin 1.2'");
    }

    @ParameterizedTest
    @CsvSource({
        "kiln-hall/kiln-hall-architecture.ifc, IFC4",
        "kiln-hall/kiln-hall-structure.ifc, IFC2X3",
        "lock-office/lock-office.ifc, IFC4X3_ADD2",
        "cart-shed/cart-shed.ifc, IFC2X3",
        "rope-walk/rope-walk.ifc, IFC4",
        "tally-sheds/tally-sheds.ifc, IFC4",
        "dye-works/dye-works.ifc, IFC4"
    })
    void states_its_schema(String path, String schema) {
        assertThat(SampleModels.all().get(path)).contains("FILE_SCHEMA(('" + schema + "'));");
    }

    @ParameterizedTest
    @CsvSource({
        "kiln-hall/kiln-hall-architecture.ifc, 0",
        "kiln-hall/kiln-hall-structure.ifc, 143",
        "lock-office/lock-office.ifc, 30",
        "cart-shed/cart-shed.ifc, 35",
        "rope-walk/rope-walk.ifc, 216",
        "tally-sheds/tally-sheds.ifc, 12",
        "dye-works/dye-works.ifc, 24"
    })
    void has_the_purlins_of_its_description(String path, long count) {
        String text = SampleModels.all().getOrDefault(path, "");
        assertThat(StepText.instances(text).values().stream()
                        .filter(instance -> instance.entity().equals("IFCMEMBER"))
                        .filter(instance -> instance.attributes().contains("'Purlin'")))
                .hasSize((int) count);
    }

    @Test
    void the_hall_lacks_just_the_purlin_of_line_five_in_bay_c_d() {
        String text = SampleModels.all().getOrDefault("kiln-hall/kiln-hall-structure.ifc", "");
        assertThat(text)
                .doesNotContain("'Purlin S5 C-D'")
                .contains("'Purlin S5 B-C'", "'Purlin S5 D-E'", "'Purlin S4 C-D'", "'Purlin S6 C-D'");
    }

    private static Map<String, String> ifcFiles(Path folder) throws IOException {
        try (Stream<Path> paths = Files.walk(folder)) {
            Map<String, String> files = new TreeMap<>();
            for (Path path : paths.filter(p -> p.toString().endsWith(".ifc")).toList()) {
                String name = folder.relativize(path).toString().replace('\\', '/');
                files.put(name, Files.readString(path, StandardCharsets.US_ASCII));
            }
            return files;
        }
    }
}
