package runtrue.report;

import java.io.IOException;
import java.io.OutputStream;
import runtrue.report.findings.Findings;
import runtrue.report.quantities.Quantities;
import runtrue.report.sheet.BookInfo;
import runtrue.report.sheet.BookWriter;
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

    private static BookInfo info(CheckResult result, String title) {
        return new BookInfo(
                title,
                result.drop(),
                result.ruleSet().name() + " " + result.ruleSet().version(),
                "Runtrue " + result.toolVersion(),
                result.runStamp());
    }
}
