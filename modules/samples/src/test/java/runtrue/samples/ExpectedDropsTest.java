package runtrue.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import runtrue.samples.expected.ExpectedDrop;
import runtrue.samples.expected.ExpectedDrops;
import runtrue.samples.expected.ExpectedPlane;
import runtrue.samples.expected.ExpectedSupports;

/** Holds the typed figures and the README together, and catches slips in the hand arithmetic. */
class ExpectedDropsTest {
    private static final Pattern NUMBER = Pattern.compile("\\d+(?:\\.\\d+)?");

    static Stream<ExpectedDrop> drops() {
        return ExpectedDrops.all().stream();
    }

    static Stream<ExpectedPlane> planes() {
        return drops().flatMap(drop -> drop.planes().stream());
    }

    @ParameterizedTest
    @MethodSource("drops")
    void every_figure_stands_in_the_drops_section_of_the_readme(ExpectedDrop drop) throws IOException {
        assertThat(numbers(section(drop.folder()))).containsAll(figures(drop));
    }

    @ParameterizedTest
    @MethodSource("drops")
    void every_drop_has_its_files(ExpectedDrop drop) {
        assertThat(SampleModels.all().keySet()).anyMatch(path -> path.startsWith(drop.folder() + "/"));
    }

    @Test
    void every_drop_has_its_figures() {
        Stream<String> folders = SampleModels.all().keySet().stream().map(path -> path.substring(0, path.indexOf('/')));
        assertThat(folders.distinct())
                .containsExactlyInAnyOrderElementsOf(
                        drops().map(ExpectedDrop::folder).toList());
    }

    @ParameterizedTest
    @MethodSource("drops")
    void subjects_are_names_in_the_files(ExpectedDrop drop) {
        StringBuilder texts = new StringBuilder();
        SampleModels.all().forEach((path, text) -> texts.append(path.startsWith(drop.folder()) ? text : ""));
        List<String> names = new ArrayList<>();
        drop.planes().forEach(plane -> names.addAll(plane.elements()));
        drop.findings().forEach(finding -> names.add(finding.subject()));
        assertThat(names).allSatisfy(name -> assertThat(texts).contains("'" + name + "'"));
    }

    @ParameterizedTest
    @MethodSource("planes")
    void plan_area_is_true_area_times_the_cosine_of_the_pitch(ExpectedPlane plane) {
        double cosine = Math.cos(Math.toRadians(plane.pitchDegrees()));
        assertThat(plane.areaTrueSquareMetres() * cosine).isCloseTo(plane.areaPlanSquareMetres(), within(2e-4));
    }

    @ParameterizedTest
    @MethodSource("planes")
    void overhangs_and_lines_add_up_to_the_run(ExpectedPlane plane) {
        assertThat(plane.supports()).allSatisfy(supports -> {
            List<Double> lines = supports.lines();
            double last = lines.get(lines.size() - 1);
            assertThat(lines.get(0)).isEqualTo(supports.eaveOverhang());
            assertThat(last + supports.ridgeOverhang()).isCloseTo(plane.runMetres(), within(1.01e-4));
        });
    }

    @ParameterizedTest
    @MethodSource("planes")
    void spans_are_the_distances_between_lines(ExpectedPlane plane) {
        assertThat(plane.supports()).allSatisfy(supports -> {
            List<Double> lines = supports.lines();
            int last = lines.size() - 1;
            assertThat(lines.get(1) - lines.get(0)).isCloseTo(supports.firstEndSpan(), within(1e-9));
            assertThat(lines.get(last) - lines.get(last - 1)).isCloseTo(supports.lastEndSpan(), within(1e-9));
            double widest = 0;
            for (int i = 2; i < last; i++) {
                widest = Math.max(widest, lines.get(i) - lines.get(i - 1));
            }
            assertThat(widest).isCloseTo(supports.usualInternalSpan(), within(1e-9));
        });
    }

    private static String section(String folder) throws IOException {
        String readme = Files.readString(Repository.root().resolve("sample-models/README.md"));
        int from = readme.indexOf("\n## " + folder + "\n");
        assertThat(from).as("heading of " + folder).isNotNegative();
        int to = readme.indexOf("\n## ", from + 1);
        return to < 0 ? readme.substring(from) : readme.substring(from, to);
    }

    private static Set<Double> numbers(String text) {
        Set<Double> numbers = new HashSet<>();
        Matcher matcher = NUMBER.matcher(text);
        while (matcher.find()) {
            numbers.add(Double.valueOf(matcher.group()));
        }
        return numbers;
    }

    private static List<Double> figures(ExpectedDrop drop) {
        List<Double> figures = new ArrayList<>(drop.edgeTotals().values());
        drop.findings().forEach(finding -> finding.value().ifPresent(figures::add));
        for (ExpectedPlane plane : drop.planes()) {
            figures.addAll(List.of(
                    plane.pitchDegrees(),
                    plane.azimuthDegrees(),
                    plane.runMetres(),
                    plane.areaTrueSquareMetres(),
                    plane.areaPlanSquareMetres(),
                    (double) plane.strips(),
                    plane.lastStripMetres()));
            plane.supports().forEach(supports -> figures.addAll(figures(supports)));
        }
        return figures;
    }

    /** Lines are written out in the README where they are few; of many it gives their number, the first and the last two. */
    private static List<Double> figures(ExpectedSupports supports) {
        List<Double> figures = new ArrayList<>(List.of(
                supports.firstEndSpan(),
                supports.lastEndSpan(),
                supports.longestEndSpan(),
                supports.usualInternalSpan(),
                supports.longestInternalSpan(),
                supports.eaveOverhang(),
                supports.ridgeOverhang()));
        List<Double> lines = supports.lines();
        boolean few = lines.size() <= 10;
        figures.addAll(few ? lines : lines.subList(0, 2));
        figures.add(few ? lines.get(0) : (double) lines.size());
        figures.addAll(lines.subList(lines.size() - 2, lines.size()));
        return figures;
    }
}
