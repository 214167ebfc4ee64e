package runtrue.report.cover;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.result.CheckResult;
import runtrue.result.FileInfo;
import runtrue.result.Measure;
import runtrue.result.Outcome;
import runtrue.result.RoofSystemInfo;
import runtrue.result.Setting;
import runtrue.result.ToleranceInfo;

/** The first sheet of each workbook: what was checked, by what, with which values, and what came out. */
public final class Cover {
    private static final List<Integer> WIDTHS = List.of(30, 15, 26, 17, 32, 22, 38);

    private final CheckResult result;
    private final CoverLines lines = new CoverLines(WIDTHS);

    private Cover(CheckResult result) {
        this.result = result;
    }

    /** The cover of a workbook with the given title. */
    public static Page page(CheckResult result, String title) {
        Cover cover = new Cover(result);
        cover.head(title);
        cover.outcomes();
        cover.files();
        cover.basis();
        cover.settings();
        cover.tolerances();
        cover.cautions();
        return cover.lines.page("Cover");
    }

    private void head(String title) {
        lines.title(title);
        lines.pair("Drop", result.drop());
        lines.pair("Run", result.runStamp());
        lines.pair("Program", "Runtrue " + result.toolVersion());
        lines.pair("Roof system", result.roofSystem().title());
        lines.row(
                List.of(
                        Cell.of("Source of its values", Look.LABEL),
                        Cell.of(result.roofSystem().source(), Look.WARNING)),
                true);
    }

    private void outcomes() {
        lines.section("Outcomes");
        for (Outcome outcome :
                List.of(Outcome.DOES_NOT_CONFORM, Outcome.NOT_ASSESSED, Outcome.CONCEDED, Outcome.CONFORMS)) {
            lines.row(
                    List.of(
                            Outcomes.cell(outcome),
                            Cell.of(result.counts().total().of(outcome), Look.COUNT)),
                    false);
        }
        lines.row(
                List.of(
                        Cell.of("Elements not read", Look.LABEL),
                        Cell.of(result.unread().size(), Look.COUNT)),
                false);
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
                        Cell.of(file.name(), Look.WRAPPED),
                        Cell.of((double) file.sizeBytes(), Look.COUNT),
                        Cell.of(file.timeStamp(), Look.TEXT),
                        Cell.of(schemaAndUnit(file), Look.WRAPPED),
                        Cell.of(file.authoringProgram(), Look.WRAPPED),
                        Cell.of(elements(file), Look.WRAPPED),
                        Cell.of(halves(file.sha256()), Look.WRAPPED)),
                false);
    }

    private static String schemaAndUnit(FileInfo file) {
        return file.lengthUnitMetres() == 0 ? "not opened" : file.schema() + ", " + unit(file.lengthUnitMetres());
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
        lines.pair("File", result.ruleSet().file());
        lines.pair("SHA-256", result.ruleSet().sha256());
        lines.section("Roof system");
        lines.pair("Name", result.roofSystem().name());
        lines.pair("File", result.roofSystem().file());
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
                            .map(t -> Cell.of(t, Look.WRAPPED))
                            .toList(),
                    true);
        }
    }

    private void tolerances() {
        lines.section("Tolerances");
        for (ToleranceInfo tolerance : result.tolerances()) {
            measure(tolerance.name(), tolerance.value(), tolerance.reason());
        }
    }

    private void measure(String name, Measure measure, String remark) {
        lines.row(
                List.of(
                        Cell.of(name, Look.LABEL),
                        Cell.of(measure.value(), Look.MEASURE),
                        Cell.of(Units.symbol(measure.unit()), Look.TEXT),
                        Cell.of(remark, Look.WRAPPED)),
                true);
    }

    private void cautions() {
        lines.section("Cautions");
        result.cautions().forEach(c -> lines.sentence(c, Look.WRAPPED));
    }

    private static String words(String name) {
        return name.replace('_', ' ');
    }
}
