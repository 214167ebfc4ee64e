package runtrue.report;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import runtrue.report.findings.Findings;
import runtrue.report.quantities.Quantities;
import runtrue.report.sheet.BookInfo;
import runtrue.report.sheet.BookWriter;
import runtrue.report.sheet.Column;
import runtrue.report.sheet.Table;
import runtrue.result.CheckResult;

/**
 * Writes the workbooks of a result. The same result gives the same bytes. Nothing is written anywhere but to the stream,
 * which stays open.
 */
public final class Workbooks {
    private Workbooks() {}

    /** Writes {@code quantities.xlsx}: what to order, plane by plane and in total. */
    public static void quantities(CheckResult result, OutputStream out) throws IOException {
        BookWriter.write(info(result, "Quantities"), Quantities.pages(result), out);
    }

    /** Writes {@code non-conformances.xlsx}: what does not conform, what could not be assessed, and what conforms. */
    public static void nonConformances(CheckResult result, OutputStream out) throws IOException {
        BookWriter.write(info(result, "Non-conformances"), Findings.pages(result), out);
    }

    /**
     * Loads what the first workbook needs, most of its time in a short run; to be called on another thread while models are
     * still being read.
     */
    public static void warmUp() throws IOException {
        BookInfo info = new BookInfo("", "", "", "", "2000-01-01T00:00:00Z");
        Table<String> table = new Table<>("Warm-up", 1, List.of(Column.text("Text", 1, t -> t)), List.of("a"), "");
        BookWriter.write(info, List.of(table.page()), OutputStream.nullOutputStream());
    }

    private static BookInfo info(CheckResult result, String title) {
        return new BookInfo(
                title,
                result.drop(),
                result.ruleSet().name() + " " + result.ruleSet().version(),
                "Runtrue " + result.toolVersion(),
                result.runStamp());
    }
}
