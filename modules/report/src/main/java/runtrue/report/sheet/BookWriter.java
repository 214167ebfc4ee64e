package runtrue.report.sheet;

import java.io.IOException;
import java.io.OutputStream;
import java.time.OffsetDateTime;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.xssf.streaming.DeferredSXSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes pages as one workbook. Rows are streamed: no more than one is held, and no temporary file is made.
 */
public final class BookWriter {
    private BookWriter() {}

    /** Writes the workbook and leaves the stream open. The same pages give the same bytes. */
    public static void write(BookInfo info, List<Page> pages, OutputStream out) throws IOException {
        try (XSSFWorkbook template = new XSSFWorkbook();
                StreamedBook book = new StreamedBook(template)) {
            properties(template.getProperties(), info);
            Styles styles = new Styles(template);
            Drawings drawings = new Drawings(template.getPackage());
            for (Page page : pages) {
                DeferredSXSSFSheet sheet = book.createSheet(page.name());
                PageSetUp.apply(page, sheet, info);
                drawings.apply(page.over(), template.getSheet(page.name()));
                Links.apply(page.over().links(), template.getSheet(page.name()));
                sheet.setRowGenerator(rows -> RowWriter.write(page, rows, styles));
            }
            book.writeAvoidingTempFiles(out);
        }
    }

    private static void properties(POIXMLProperties properties, BookInfo info) {
        Optional<Date> stamp =
                Optional.of(Date.from(OffsetDateTime.parse(info.stamp()).toInstant()));
        var core = properties.getCoreProperties();
        core.setTitle(CellText.clean(info.title() + ": " + info.drop()));
        core.setSubjectProperty(CellText.clean(info.ruleSet()));
        core.setCreator(info.program());
        core.setCreated(stamp);
        core.setModified(stamp);
        properties.getExtendedProperties().setApplication(info.program());
    }
}
