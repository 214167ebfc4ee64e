package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.result.BillResult;
import runtrue.result.BillResult.Line;
import runtrue.result.json.ResultJson;

/** Quantities of two samples against the bills worked by hand in the samples' README, which is read here. */
class SampleBillsTest {
    private static final Path SAMPLES =
            Path.of(System.getProperty("runtrue.root", "../..")).resolve("sample-models");

    private static final Map<String, BillResult> BILLS = new TreeMap<>();

    @BeforeAll
    static void check(@TempDir Path output) throws IOException {
        Path rates = output.resolve("rates.csv");
        Files.writeString(
                rates, "item,unit,rate,currency\nroof-sheet,m,10,EUR\nclip,box,180,EUR\ndovecote,pcs,1,EUR\n");
        for (String drop : List.of("kiln-hall", "rope-walk")) {
            CommandRun.of(
                    options -> ModelCheck.with(options, Instant.EPOCH),
                    "check",
                    SAMPLES.resolve(drop).toString(),
                    "--rates",
                    rates.toString(),
                    "--output",
                    output.toString());
            BILLS.put(
                    drop,
                    ResultJson.read(output.resolve(drop).resolve("result.json")).bill());
        }
    }

    private static BillResult bill(String drop) {
        return Optional.ofNullable(BILLS.get(drop)).orElseThrow();
    }

    private static Line line(String drop, String id) {
        return bill(drop).lines().stream()
                .filter(l -> l.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(drop + " has no line " + id));
    }

    /** Rows of the table below the heading. */
    private static List<List<String>> handWorked(String drop) throws IOException {
        String readme = Files.readString(SAMPLES.resolve("README.md"));
        String heading = "### Bill by hand: " + drop;
        List<List<String>> rows = new ArrayList<>();
        for (String row : readme.substring(readme.indexOf(heading)).lines().toList()) {
            if (row.startsWith("| ") && !row.startsWith("| line ")) {
                rows.add(Arrays.stream(row.substring(1).split("\\|"))
                        .map(String::strip)
                        .toList());
            } else if (!rows.isEmpty() && !row.startsWith("|")) {
                break;
            }
        }
        return rows;
    }

    @ParameterizedTest
    @CsvSource({"kiln-hall, 22", "rope-walk, 20"})
    void the_bill_is_the_one_worked_by_hand(String drop, int rows) throws IOException {
        assertThat(handWorked(drop)).hasSize(rows).allSatisfy(row -> {
            Line line = line(drop, row.get(0));
            assertThat(line.unit()).isEqualTo(row.get(1));
            assertThat(line.net()).as(row.get(0)).isCloseTo(Double.parseDouble(row.get(2)), within(1.1e-3));
            assertThat(line.ordered()).as(row.get(0)).isEqualTo(Double.parseDouble(row.get(3)));
            assertThat(line.count()).as(row.get(0)).isEqualTo(Long.parseLong(row.get(4)));
        });
    }

    @ParameterizedTest
    @CsvSource({"kiln-hall, 'corner 162, edge 440, interior 1166'", "rope-walk, 'corner 84, edge 1278, interior 3894'"})
    void clips_lie_in_the_zones_worked_by_hand(String drop, String zones) {
        assertThat(line(drop, "clip").variant()).isEqualTo(zones);
    }

    @ParameterizedTest
    @CsvSource({
        "kiln-hall, 'Roof sheets, mass', 6866.64",
        "kiln-hall, 'Roof sheets, total length', 2112.877",
        "kiln-hall, 'Roof sheets, cover area that covers no roof', 6.207",
        "rope-walk, 'Mass of a pack to lift', 1463.84"
    })
    void figures_are_those_worked_by_hand(String drop, String what, double value) {
        assertThat(bill(drop).figures())
                .filteredOn(f -> f.what().equals(what))
                .singleElement()
                .satisfies(f -> assertThat(f.value().orElseThrow()).isCloseTo(value, within(5e-3)));
    }

    @Test
    void members_and_flashings_keep_the_lengths_they_are_cut_to() {
        assertThat(line("rope-walk", "sub-purlin").pieces())
                .containsExactly(new BillResult.Pieces(6, 432), new BillResult.Pieces(0.9, 72));
        assertThat(line("kiln-hall", "ridge-cap").pieces())
                .containsExactly(new BillResult.Pieces(3, 12), new BillResult.Pieces(1.5, 1));
    }

    /** Two files in common coordinates; the ridge lies between two planes. */
    @Test
    void a_federated_drop_counts_the_shared_ridge_once_and_says_with_whom_it_is_shared() {
        assertThat(line("kiln-hall", "ridge-cap").parts())
                .singleElement()
                .satisfies(p -> assertThat(p.sharedWith()).hasSize(1));
    }

    /** The files of the hall and each of them once more under another name. */
    @Test
    void what_is_issued_twice_is_ordered_once(@TempDir Path folder) throws IOException {
        Path twice = Files.createDirectory(folder.resolve("twice"));
        for (String file : List.of("kiln-hall-architecture.ifc", "kiln-hall-structure.ifc", "runtrue.yaml")) {
            Files.copy(SAMPLES.resolve("kiln-hall").resolve(file), twice.resolve(file));
        }
        Files.copy(twice.resolve("kiln-hall-architecture.ifc"), twice.resolve("a-copy.ifc"));
        Files.copy(twice.resolve("kiln-hall-structure.ifc"), twice.resolve("z-copy.ifc"));
        CommandRun.of(
                options -> ModelCheck.with(options, Instant.EPOCH),
                "check",
                twice.toString(),
                "--output",
                folder.resolve("out").toString());
        BillResult again =
                ResultJson.read(folder.resolve("out/twice/result.json")).bill();
        assertThat(again.lines())
                .extracting(Line::id, Line::net, Line::ordered, Line::count)
                .containsExactlyElementsOf(bill("kiln-hall").lines().stream()
                        .map(l -> tuple(l.id(), l.net(), l.ordered(), l.count()))
                        .toList());
    }

    @Test
    void rates_find_their_lines_and_the_others_are_listed() {
        assertThat(line("kiln-hall", "roof-sheet/12.418").rate())
                .hasValue(new BillResult.Rate(10, "EUR", "m", "length"));
        assertThat(line("kiln-hall", "clip").rate()).hasValue(new BillResult.Rate(180, "EUR", "box", "count"));
        BillResult.Rates rates = bill("kiln-hall").rates().orElseThrow();
        assertThat(rates.unknown()).containsExactly("line 4: dovecote, pcs: no such item in this bill");
        assertThat(rates.unpriced()).contains("gutter").doesNotContain("clip");
    }
}
