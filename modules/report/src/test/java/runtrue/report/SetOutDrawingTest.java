package runtrue.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import runtrue.report.setout.SetOutDrawing;
import runtrue.result.CheckResult;

/** Group codes and entities by the published reference of DXF release 12, from memory. */
class SetOutDrawingTest {
    private static final CheckResult GABLE = InventedGable.drop(1);

    private record Pair(int code, String value) {}

    private static List<Pair> pairs(CheckResult result) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SetOutDrawing.write(result, out);
        String[] lines = out.toString(StandardCharsets.US_ASCII).split("\r\n", -1);
        assertThat(lines.length % 2).isEqualTo(1);
        List<Pair> pairs = new ArrayList<>();
        for (int i = 0; i + 1 < lines.length; i += 2) {
            pairs.add(new Pair(Integer.parseInt(lines[i]), lines[i + 1]));
        }
        return pairs;
    }

    /** The pairs of each figure, its kind first. */
    private static List<List<Pair>> figures(CheckResult result, String kind, String layer) throws IOException {
        List<Pair> pairs = pairs(result);
        List<List<Pair>> found = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i++) {
            if (pairs.get(i).equals(new Pair(0, kind)) && pairs.get(i + 1).equals(new Pair(8, layer))) {
                int end = i + 1;
                while (pairs.get(end).code() != 0) {
                    end++;
                }
                found.add(pairs.subList(i, end));
            }
        }
        return found;
    }

    @Test
    void sections_and_tables_are_opened_and_closed_and_the_file_ends() throws IOException {
        List<Pair> pairs = pairs(GABLE);
        Map<String, Long> marks = pairs.stream()
                .filter(p -> p.code() == 0)
                .collect(Collectors.groupingBy(Pair::value, Collectors.counting()));
        assertThat(marks.get("SECTION")).isEqualTo(3).isEqualTo(marks.get("ENDSEC"));
        assertThat(marks.get("TABLE")).isEqualTo(2).isEqualTo(marks.get("ENDTAB"));
        assertThat(marks.get("POLYLINE")).isEqualTo(marks.get("SEQEND"));
        assertThat(pairs.get(pairs.size() - 1)).isEqualTo(new Pair(0, "EOF"));
    }

    @Test
    void everything_lies_on_a_layer_that_the_table_names() throws IOException {
        List<Pair> pairs = pairs(GABLE);
        List<String> layers = new ArrayList<>();
        for (int i = 0; i + 1 < pairs.size(); i++) {
            if (pairs.get(i).equals(new Pair(0, "LAYER"))) {
                layers.add(pairs.get(i + 1).value());
            }
        }
        assertThat(layers)
                .contains("PLANES", "SHEETS", "EDGE-RIDGE", "EDGE-EAVE")
                .allMatch(l -> l.length() <= 31);
        assertThat(pairs).filteredOn(p -> p.code() == 8).isNotEmpty().allMatch(p -> layers.contains(p.value()));
    }

    /** By hand: a slope of 7.2 m up the fall at 3 in 4 from level 5 ends at 5 + 7.2 x 0.6, in the survey's own coordinates. */
    @Test
    void a_sheet_lies_where_it_lies_in_the_model() throws IOException {
        double ridge = GABLE.planes().get(0).ridgeLevelMetres();
        List<List<Pair>> corners = figures(GABLE, "VERTEX", "SHEETS");
        assertThat(corners).isNotEmpty();
        assertThat(corners.stream().mapToDouble(c -> value(c, 30)).max().orElseThrow())
                .isEqualTo(ridge);
        assertThat(corners.stream().mapToDouble(c -> value(c, 30)).min().orElseThrow())
                .isEqualTo(5);
        assertThat(corners).allSatisfy(c -> assertThat(value(c, 10)).isBetween(430_000.0, 430_012.0));
        long sheets = GABLE.planes().stream().mapToLong(p -> p.sheets().size()).sum();
        assertThat(figures(GABLE, "POLYLINE", "SHEETS")).hasSize((int) sheets);
        assertThat(figures(GABLE, "TEXT", "SHEET-LENGTHS")).hasSize((int) sheets);
    }

    @Test
    void what_a_model_says_is_one_line_of_ascii() throws IOException {
        CheckResult named = InventedGable.drop(1, "Süd\n0\nEOF\u2028plane");
        List<String> names = figures(named, "TEXT", "PLANE-NAMES").stream()
                .flatMap(List::stream)
                .filter(p -> p.code() == 1)
                .map(Pair::value)
                .toList();
        assertThat(names).anyMatch(n -> n.startsWith("S\\U+00FCd 0 EOF\\U+2028plane"));
    }

    private static double value(List<Pair> figure, int code) {
        return figure.stream()
                .filter(p -> p.code() == code)
                .mapToDouble(p -> Double.parseDouble(p.value()))
                .findFirst()
                .orElseThrow();
    }
}
