package runtrue.report.cover;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Overlay;
import runtrue.report.sheet.Page;
import runtrue.result.CheckResult;
import runtrue.result.FileInfo;
import runtrue.result.Finding;
import runtrue.result.Importance;
import runtrue.result.Measure;
import runtrue.result.Outcome;
import runtrue.result.PlaneResult;
import runtrue.result.RoofSystemInfo;
import runtrue.result.Setting;
import runtrue.result.change.ChangeKind;
import runtrue.result.change.Changes;

/** The first sheet of each workbook: what was checked, by what, with which values, and what came out. */
public final class Cover {
    private static final List<Integer> WIDTHS = List.of(30, 15, 26, 17, 32, 22, 38);

    private static final String NAME = "Cover";

    /** At the right, beside what to do. */
    private static final int CHART_COLUMNS = 2;

    /** Of those columns, in points. */
    private static final double CHART_WIDTH = 320;

    private final CheckResult result;
    private final Ways ways;
    private final CoverLines lines = new CoverLines(WIDTHS);

    private Cover(CheckResult result, Ways ways) {
        this.result = result;
        this.ways = ways;
    }

    /** The cover of a workbook with the given title. */
    public static Page page(CheckResult result, String title, Ways ways) {
        Cover cover = new Cover(result, ways);
        cover.head(title);
        cover.outcomes();
        cover.files();
        cover.basis();
        cover.settings();
        cover.cautions();
        return cover.lines.page(NAME);
    }

    private void head(String title) {
        lines.title(title);
        Banner banner = Banner.of(result);
        lines.banner(banner.text(), banner.look());
        lines.sentence(
                "Roof system " + result.roofSystem().title() + ". Source of its values: "
                        + result.roofSystem().source(),
                Look.WARNING);
        lines.pair("Drop", result.drop());
        lines.pair("Run", result.runStamp());
        lines.pair("Program", "Runtrue " + result.toolVersion());
        lines.pair("Roof", roof());
        result.changes().ifPresent(this::changes);
    }

    private void changes(Changes changes) {
        lines.pair(
                "Since an earlier check",
                String.format(
                        Locale.ROOT,
                        "%d new, %d changed, %d gone, %d as before since %s: sheet Changes of non-conformances.xlsx",
                        changes.count(ChangeKind.NEW),
                        changes.count(ChangeKind.CHANGED),
                        changes.count(ChangeKind.GONE),
                        changes.sameFindings(),
                        changes.earlierRunStamp()));
        if (!changes.basis().isEmpty()) {
            lines.sentence("Also different since then: " + String.join(" ", changes.basis()), Look.NOTE);
        }
    }

    private String roof() {
        double area = result.planes().stream()
                .mapToDouble(PlaneResult::areaSquareMetres)
                .sum();
        int planes = result.planes().size();
        int sheets = result.planes().stream().mapToInt(p -> p.sheets().size()).sum();
        return String.format(
                Locale.ROOT,
                "%d %s, %,.2f m² without openings, %,d sheets",
                planes,
                planes == 1 ? "plane" : "planes",
                area,
                sheets);
    }

    private void outcomes() {
        lines.section("Outcomes, and what to do");
        int first = lines.next();
        outcome(
                Outcome.DOES_NOT_CONFORM,
                "Raise as RFI or agree a concession: sheet Non-conformances of non-conformances.xlsx prints ready to attach.");
        outcome(Outcome.NOT_ASSESSED, "Supply what sheet Not assessed asks for, and check again.");
        outcome(Outcome.CONCEDED, "Accepted by the person who is named in sheet Non-conformances.");
        outcome(Outcome.CONFORMS, "Listed with measure and limit in sheet Conforming.");
        lines.rowBesideChart(
                List.of(
                        Cell.of("Elements not read", Look.LABEL),
                        Cell.of(result.unread().size(), Look.NOTE_COUNT),
                        Cell.of(
                                result.unread().isEmpty() ? "" : "Left out of all quantities and outcomes.",
                                Look.NOTE)),
                Optional.empty(),
                CHART_COLUMNS);
        lines.rowBesideChart(
                List.of(
                        Cell.of("Model health", Look.LABEL),
                        Cell.of(result.health().size(), Look.NOTE_COUNT),
                        Cell.of(health(), Look.NOTE)),
                Optional.empty(),
                CHART_COLUMNS);
        lines.rowBesideChart(
                List.of(
                        Cell.of("Stated values that contradict", Look.LABEL),
                        Cell.of(contradictions(), Look.NOTE_COUNT),
                        Cell.of(stated(), Look.NOTE)),
                Optional.empty(),
                CHART_COLUMNS);
        lines.chart(chart(first));
        details("What does not conform", Outcome.DOES_NOT_CONFORM, Finding::message);
        details("What was not assessed", Outcome.NOT_ASSESSED, Finding::reason);
    }

    /** Counts of the four outcomes that begin at the given row, told by sign and word beside each bar. */
    private Overlay.Bars chart(int first) {
        List<Outcome> shown =
                List.of(Outcome.DOES_NOT_CONFORM, Outcome.NOT_ASSESSED, Outcome.CONCEDED, Outcome.CONFORMS);
        int column = WIDTHS.size() - CHART_COLUMNS;
        return new Overlay.Bars(
                NAME,
                first,
                0,
                shown.stream().map(Outcomes::words).toList(),
                shown.stream().map(o -> result.counts().total().of(o)).toList(),
                shown.stream().map(Outcomes::colour).toList(),
                new Overlay.Spot(column, first, CHART_WIDTH, lines.heightFrom(first)),
                "Number of outcomes: "
                        + shown.stream()
                                .map(o -> result.counts().total().of(o) + " " + Outcomes.words(o))
                                .collect(Collectors.joining(", ")));
    }

    private String health() {
        if (result.health().isEmpty()) {
            return "";
        }
        String counts = Arrays.stream(Importance.values())
                .map(i -> result.health().stream()
                                .filter(l -> l.importance() == i)
                                .count() + " " + i.label())
                .collect(Collectors.joining(", "));
        return "Things amiss with the models, by importance: " + counts
                + ". Sheet Model health of non-conformances.xlsx says why each matters and what to do.";
    }

    private int contradictions() {
        return (int) result.stated().stream()
                .filter(v -> v.verdict().equals("contradicts"))
                .count();
    }

    private String stated() {
        return result.stated().isEmpty()
                ? ""
                : "Of " + result.stated().size() + " that the models state of pitch, area, length and thickness."
                        + " Geometry wins; sheet Stated values of non-conformances.xlsx has both.";
    }

    private void outcome(Outcome outcome, String what) {
        int count = result.counts().total().of(outcome);
        lines.rowBesideChart(
                List.of(
                        Outcomes.cell(outcome),
                        Cell.of(count, Look.NOTE_COUNT),
                        Cell.of(count == 0 ? "" : what, Look.NOTE)),
                ways.to(outcome),
                CHART_COLUMNS);
    }

    /** One row a rule: how often, and the first case. */
    private void details(String heading, Outcome outcome, Function<Finding, String> text) {
        Map<String, List<Finding>> byRule = result.findings(outcome).stream()
                .collect(Collectors.groupingBy(Finding::title, LinkedHashMap::new, Collectors.toList()));
        if (byRule.isEmpty()) {
            return;
        }
        lines.section(heading);
        byRule.forEach((rule, findings) -> {
            String first = text.apply(findings.get(0));
            int more = findings.size() - 1;
            lines.row(
                    List.of(
                            Cell.of(rule, Look.LABEL),
                            Cell.of(findings.size(), Look.NOTE_COUNT),
                            Cell.of(more == 0 ? first : first + " (and " + more + " more)", Look.NOTE)),
                    ways.to(findings.get(0)));
        });
    }

    private void files() {
        lines.section("Files");
        lines.heads(
                "File",
                "Size (bytes)",
                "Time stamp in the file",
                "Schema, unit",
                "Authoring program, as stated",
                "Elements",
                "SHA-256");
        result.files().forEach(this::file);
    }

    private void file(FileInfo file) {
        lines.row(
                List.of(
                        Cell.of(file.name(), Look.NOTE),
                        Cell.of((double) file.sizeBytes(), Look.NOTE_COUNT),
                        Cell.of(file.timeStamp(), Look.NOTE),
                        Cell.of(schemaAndUnit(file), Look.NOTE),
                        Cell.of(file.authoringProgram(), Look.NOTE),
                        Cell.of(elements(file), Look.NOTE),
                        Cell.of(halves(file.sha256()), Look.NOTE)),
                false);
    }

    private static String schemaAndUnit(FileInfo file) {
        return !file.opened() ? "not opened" : file.schema() + ", " + unit(file.lengthUnitMetres());
    }

    private static String unit(double metres) {
        if (metres == 1) {
            return "m";
        } else if (metres == 0.001) {
            return "mm";
        } else if (metres == 0.01) {
            return "cm";
        } else if (metres == 0.3048) {
            return "ft";
        } else if (metres == 0.0254) {
            return "in";
        }
        return metres + " m";
    }

    private static String elements(FileInfo file) {
        return String.format(
                Locale.ROOT,
                "%d roof, %d member,\n%d not read",
                file.roofElements(),
                file.memberElements(),
                file.unreadElements());
    }

    /** In two lines, so that the column stays narrow. */
    private static String halves(String hash) {
        int half = hash.length() / 2;
        return half == 0 ? hash : hash.substring(0, half) + "\n" + hash.substring(half);
    }

    private void basis() {
        lines.section("Rule set");
        lines.pair("Name", result.ruleSet().name());
        lines.pair("Version", result.ruleSet().version());
        lines.pair("File", tail(result.ruleSet().file()));
        lines.pair("SHA-256", result.ruleSet().sha256());
        lines.section("Roof system");
        lines.pair("Name", result.roofSystem().name());
        lines.pair("File", tail(result.roofSystem().file()));
        for (RoofSystemInfo.Text text : result.roofSystem().texts()) {
            lines.pair(words(text.name()), text.text());
        }
        for (RoofSystemInfo.Value value : result.roofSystem().values()) {
            measure(words(value.name()), value.measure(), "");
        }
    }

    private void settings() {
        lines.section("Settings in force");
        lines.heads("Setting", "From", "Value", "File");
        for (Setting setting : result.settings()) {
            lines.row(
                    Stream.of(setting.name(), setting.origin().label(), setting.value(), setting.file())
                            .map(t -> Cell.of(t, Look.NOTE))
                            .toList(),
                    true);
        }
    }

    private void measure(String name, Measure measure, String remark) {
        lines.row(
                List.of(
                        Cell.of(name, Look.LABEL),
                        Cell.of(measure.value(), Look.NOTE_MEASURE),
                        Cell.of(Units.symbol(measure.unit()), Look.NOTE),
                        Cell.of(remark, Look.NOTE)),
                true);
    }

    private void cautions() {
        lines.section("Cautions");
        result.cautions().forEach(c -> lines.sentence(c, Look.NOTE));
    }

    /** Folder and name: what lies above them is the business of the machine that ran the check. */
    private static String tail(String file) {
        String[] parts = file.split("[/\\\\]+", -1);
        int kept = Math.min(2, parts.length);
        return String.join("/", List.of(parts).subList(parts.length - kept, parts.length));
    }

    private static String words(String name) {
        return name.replace('_', ' ');
    }
}
