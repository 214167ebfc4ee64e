package runtrue.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.drawingml.x2006.chart.ChartSpaceDocument;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.CTDrawing;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.SstDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.StyleSheetDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;

/** Every part of the workbooks against the schemas of ECMA-376, as the spreadsheet library carries them. */
class WorkbookSchemaTest {
    @Test
    void everyPartOfBothWorkbooksIsValid() throws IOException, XmlException {
        for (WorkbooksTest.Book book : WorkbooksTest.Book.values()) {
            Map<String, byte[]> parts = parts(book.bytes(InventedGable.drop(1)));
            assertThat(parts).containsKeys("xl/workbook.xml", "xl/charts/chart1.xml", "xl/drawings/drawing2.xml");
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                assertThat(errors(part.getKey(), part.getValue()))
                        .as(book + " " + part.getKey())
                        .isEmpty();
            }
        }
    }

    @Test
    void aPartOutOfOrderIsFound() throws IOException, XmlException {
        byte[] wrong = ("<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                        + "<drawing xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\""
                        + " r:id=\"rId1\"/><sheetData/></worksheet>")
                .getBytes(StandardCharsets.UTF_8);
        assertThat(errors("xl/worksheets/sheet1.xml", wrong)).isNotEmpty();
    }

    /** Relationships, content types and document properties belong to the package, not to these schemas. */
    private static List<XmlError> errors(String name, byte[] bytes) throws IOException, XmlException {
        ByteArrayInputStream in = new ByteArrayInputStream(bytes);
        XmlObject document;
        if (name.contains("_rels/") || !name.startsWith("xl/") || !name.endsWith(".xml")) {
            return List.of();
        } else if (name.startsWith("xl/worksheets/")) {
            document = WorksheetDocument.Factory.parse(in);
        } else if (name.startsWith("xl/charts/")) {
            document = ChartSpaceDocument.Factory.parse(in);
        } else if (name.startsWith("xl/drawings/")) {
            document = CTDrawing.Factory.parse(in, new XmlOptions().setLoadReplaceDocumentElement(null));
        } else if (name.equals("xl/workbook.xml")) {
            document = WorkbookDocument.Factory.parse(in);
        } else if (name.equals("xl/styles.xml")) {
            document = StyleSheetDocument.Factory.parse(in);
        } else if (name.equals("xl/sharedStrings.xml")) {
            document = SstDocument.Factory.parse(in);
        } else {
            throw new IllegalStateException("no schema named for " + name);
        }
        List<XmlError> errors = new ArrayList<>();
        document.validate(new XmlOptions().setErrorListener(errors));
        return List.copyOf(errors);
    }

    private static Map<String, byte[]> parts(byte[] book) throws IOException {
        Map<String, byte[]> parts = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(book))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), zip.readAllBytes());
            }
        }
        return parts;
    }
}
