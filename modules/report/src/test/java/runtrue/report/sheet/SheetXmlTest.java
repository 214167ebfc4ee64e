package runtrue.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.xmlunit.builder.Input;
import org.xmlunit.xpath.JAXPXPathEngine;

class SheetXmlTest {
    private static final BookInfo INFO = new BookInfo("T", "A & B", "Rules 1", "Runtrue 0", "2026-01-01T00:00:00Z");

    @Test
    void everyPartIsWellFormed() throws IOException {
        for (Map.Entry<String, String> part : parts(2).entrySet()) {
            assertThat(count(part.getValue(), "/*")).as(part.getKey()).isEqualTo(1);
        }
    }

    @Test
    void aSheetHoldsItsRowsAndNoFormula() throws IOException {
        String sheet = sheet(2);
        assertThat(count(sheet, "//s:sheetData/s:row")).isEqualTo(3);
        assertThat(count(sheet, "//s:f")).isZero();
        assertThat(count(sheet, "//s:hyperlink")).isZero();
        assertThat(count(sheet, "//s:row[2]/s:c[1][@t='inlineStr']/s:is/s:t[.='=1+1']"))
                .isEqualTo(1);
        assertThat(count(sheet, "//s:row[2]/s:c[2][not(@t) or @t='n']/s:v")).isEqualTo(1);
    }

    /** The order of children that ISO/IEC 29500-1, 18.3.1.99 (CT_Worksheet) prescribes; from memory. */
    @Test
    void theChildrenOfAWorksheetStandInThePrescribedOrder() throws IOException {
        String sheet = sheet(2);
        List<String> order = List.of(
                "sheetPr",
                "dimension",
                "sheetViews",
                "sheetFormatPr",
                "cols",
                "sheetData",
                "autoFilter",
                "mergeCells",
                "conditionalFormatting",
                "hyperlinks",
                "printOptions",
                "pageMargins",
                "pageSetup",
                "headerFooter",
                "rowBreaks",
                "drawing");
        int before = -1;
        for (var node :
                engine().selectNodes("/s:worksheet/*", Input.fromString(sheet).build())) {
            int at = order.indexOf(node.getLocalName());
            assertThat(at).as(node.getLocalName()).isGreaterThan(before);
            before = at;
        }
    }

    @Test
    void anEmptyTableSaysSo() throws IOException {
        String sheet = sheet(0);
        assertThat(count(sheet, "//s:row[2]/s:c/s:is/s:t[.='Nothing here.']")).isEqualTo(1);
        assertThat(count(sheet, "//s:autoFilter")).isZero();
    }

    @Test
    void manyRowsAreWrittenAsTheyCome() throws IOException {
        assertThat(count(sheet(5000), "//s:row")).isEqualTo(5001);
    }

    private static int count(String xml, String path) {
        int count = 0;
        for (var node : engine().selectNodes(path, Input.fromString(xml).build())) {
            count += node == null ? 0 : 1;
        }
        return count;
    }

    private static String sheet(int rows) throws IOException {
        return Objects.requireNonNull(parts(rows).get("xl/worksheets/sheet1.xml"));
    }

    private static JAXPXPathEngine engine() {
        JAXPXPathEngine engine = new JAXPXPathEngine();
        engine.setNamespaceContext(Map.of("s", "http://schemas.openxmlformats.org/spreadsheetml/2006/main"));
        return engine;
    }

    private static Map<String, String> parts(int rows) throws IOException {
        List<Integer> numbers = IntStream.range(0, rows).boxed().toList();
        Page page = new Table<>(
                        "Some",
                        1,
                        List.of(
                                Column.<Integer>text("Text", 10, i -> "=1+1"),
                                Column.<Integer>metres("Length", i -> i * 0.5)),
                        numbers,
                        "Nothing here.")
                .page();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        BookWriter.write(INFO, List.of(page), out);
        Map<String, String> parts = new TreeMap<>();
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                parts.put(entry.getName(), new String(zip.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return parts;
    }
}
