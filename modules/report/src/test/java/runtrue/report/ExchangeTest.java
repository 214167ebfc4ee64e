package runtrue.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xmlunit.builder.Input;
import org.xmlunit.xpath.JAXPXPathEngine;
import runtrue.report.exchange.CsvTables;
import runtrue.report.exchange.TestCases;
import runtrue.result.CheckResult;

class ExchangeTest {
    private static final CheckResult RESULT = MillLane.result();

    @FunctionalInterface
    private interface Writer {
        void to(CheckResult result, OutputStream out) throws IOException;
    }

    private static String text(Writer writer) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        writer.to(RESULT, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static List<CSVRecord> rows(Writer writer) throws IOException {
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(text(writer)))
                .getRecords();
    }

    private static List<Element> elements(String path) throws IOException {
        return StreamSupport.stream(
                        new JAXPXPathEngine()
                                .selectNodes(
                                        path,
                                        Input.fromString(text(TestCases::write)).build())
                                .spliterator(),
                        false)
                .map(Element.class::cast)
                .toList();
    }

    @Test
    void everyFindingIsARowWithItsNumbersApartFromTheirUnit() throws IOException {
        assertThat(rows(CsvTables::findings)).hasSameSizeAs(RESULT.findings()).anySatisfy(row -> {
            assertThat(row.get("rule")).isEqualTo("end-span");
            assertThat(row.get("measured")).isEqualTo("1900");
            assertThat(row.get("limit")).isEqualTo("1800");
            assertThat(row.get("margin")).isEqualTo("-100");
            assertThat(row.get("unit")).isEqualTo("mm");
            assertThat(row.get("x (m)")).isEqualTo("430006.25");
        });
    }

    @Test
    void whatLooksLikeAFormulaIsText() throws IOException {
        assertThat(text(CsvTables::findings)).contains("'=HYPERLINK").doesNotContain(",=HYPERLINK", "\n=HYPERLINK");
    }

    @Test
    void everyLineOfTheOrderIsARow() throws IOException {
        assertThat(rows(CsvTables::quantities)).hasSameSizeAs(RESULT.bill().lines());
    }

    @Test
    void aBuildServerCountsEveryJudgementAndTakesNoneThatWasNotAssessedForPassed() throws IOException {
        assertThat(elements("/testsuites/testsuite/testcase"))
                .hasSize(RESULT.findings().size() + RESULT.conforming().size());
        assertThat(elements("//testcase[failure]")).hasSize(2);
        assertThat(elements("//testcase[skipped]"))
                .hasSize(2)
                .anySatisfy(e -> assertThat(
                                ((Element) e.getElementsByTagName("skipped").item(0)).getAttribute("message"))
                        .startsWith("not assessed: "));
        assertThat(elements("//testcase[not(*)]")).hasSize(RESULT.conforming().size());
    }
}
