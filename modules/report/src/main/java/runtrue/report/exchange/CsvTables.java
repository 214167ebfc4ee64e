package runtrue.report.exchange;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import runtrue.report.sheet.CellText;
import runtrue.result.BillResult;
import runtrue.result.CheckResult;
import runtrue.result.ElementRef;
import runtrue.result.Finding;
import runtrue.result.Measure;
import runtrue.result.Point;

/**
 * Findings and quantities as comma-separated values: RFC 4180, UTF-8, a heading first, a point for decimals, units in the
 * headings or in a column. Several values in a field stand on lines of their own.
 */
public final class CsvTables {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180;

    private CsvTables() {}

    private record Field<T>(String heading, Function<T, String> value) {}

    private static final List<Field<Finding>> FINDINGS = List.of(
            text("id", Finding::id),
            text("outcome", f -> f.outcome().label()),
            text("severity", f -> f.severity().label()),
            text("rule", Finding::rule),
            text("title", Finding::title),
            text("subject", Finding::subject),
            text("plane", Finding::planeName),
            text("plane id", Finding::plane),
            text("storey", Finding::storey),
            text("grid", Finding::gridPlace),
            text("x (m)", f -> coordinate(f, Point::xMetres)),
            text("y (m)", f -> coordinate(f, Point::yMetres)),
            text("z (m)", f -> coordinate(f, Point::zMetres)),
            text("measured", f -> number(f.measured())),
            text("must be", Finding::comparison),
            text("limit", f -> number(f.limit())),
            text("margin", f -> number(f.margin())),
            text("unit", f -> f.measured().or(f::limit).map(Measure::unit).orElse("")),
            text("source of the limit", Finding::limitSource),
            text("message", Finding::message),
            text("cure", Finding::cure),
            text("reason", Finding::reason),
            text("files", f -> String.join("\n", f.files())),
            text(
                    "GlobalIds",
                    f -> f.elements().stream().map(ElementRef::globalId).collect(Collectors.joining("\n"))));

    private static final List<Field<BillResult.Line>> QUANTITIES = List.of(
            text("id", BillResult.Line::id),
            text("section", BillResult.Line::section),
            text("item", BillResult.Line::item),
            text("description", BillResult.Line::description),
            text("variant", BillResult.Line::variant),
            text("count", l -> l.count() == 0 ? "" : Long.toString(l.count())),
            text("each", BillResult.Line::each),
            text("length of each (m)", l -> l.lengthMetres() == 0 ? "" : number(l.lengthMetres())),
            text("net", l -> number(l.net())),
            text("gross", l -> number(l.gross())),
            text("ordered", l -> number(l.ordered())),
            text("unit", BillResult.Line::unit),
            text("mass (kg)", l -> number(l.massKilograms())),
            text("method", BillResult.Line::method));

    /** All that does not conform, was conceded or not assessed; leaves the stream open. */
    public static void findings(CheckResult result, OutputStream out) throws IOException {
        write(FINDINGS, result.findings(), out);
    }

    /** What to order; leaves the stream open. */
    public static void quantities(CheckResult result, OutputStream out) throws IOException {
        write(QUANTITIES, result.bill().lines(), out);
    }

    private static <T> void write(List<Field<T>> fields, List<T> rows, OutputStream out) throws IOException {
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        CSVPrinter printer = new CSVPrinter(writer, FORMAT);
        printer.printRecord(fields.stream().map(Field::heading));
        for (T row : rows) {
            printer.printRecord(fields.stream().map(f -> f.value().apply(row)));
        }
        printer.flush();
    }

    private static <T> Field<T> text(String heading, Function<T, String> value) {
        return new Field<>(heading, row -> safe(value.apply(row)));
    }

    /**
     * Spreadsheet programs run what looks like a formula in such a file; an apostrophe before it keeps it text there.
     * Negative numbers are none.
     */
    private static String safe(String value) {
        return CellText.looksLive(value) && !isNumber(value) ? "'" + value : value;
    }

    private static boolean isNumber(String value) {
        try {
            new BigDecimal(value);
            return true;
        } catch (NumberFormatException e) {
            return false;
        }
    }

    private static String coordinate(Finding finding, Function<Point, Double> axis) {
        return finding.place().map(axis).map(CsvTables::number).orElse("");
    }

    private static String number(Optional<Measure> measure) {
        return measure.map(m -> number(m.value())).orElse("");
    }

    private static String number(OptionalDouble value) {
        return value.isPresent() ? number(value.getAsDouble()) : "";
    }

    /** Without an exponent, which not every program reads. */
    private static String number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
