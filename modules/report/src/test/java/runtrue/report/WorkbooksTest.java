package runtrue.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.util.TempFile;
import org.apache.poi.util.TempFileCreationStrategy;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import runtrue.result.CheckResult;

class WorkbooksTest {
    enum Book {
        QUANTITIES {
            @Override
            void write(CheckResult result, OutputStream out) throws IOException {
                Workbooks.quantities(result, out);
            }
        },
        NON_CONFORMANCES {
            @Override
            void write(CheckResult result, OutputStream out) throws IOException {
                Workbooks.nonConformances(result, out);
            }
        };

        abstract void write(CheckResult result, OutputStream out) throws IOException;

        byte[] bytes() throws IOException {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            write(MillLane.result(), out);
            return out.toByteArray();
        }

        XSSFWorkbook read() throws IOException {
            return new XSSFWorkbook(new ByteArrayInputStream(bytes()));
        }
    }

    @ParameterizedTest
    @EnumSource
    void twoWritesAreTheSameBytesInAnyLocaleAndTimeZone(Book book) throws IOException {
        byte[] first = book.bytes();
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-SA-u-nu-arab"));
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            assertThat(book.bytes()).isEqualTo(first);
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @ParameterizedTest
    @EnumSource
    void noCellIsAFormulaOrALink(Book book) throws IOException {
        try (XSSFWorkbook workbook = book.read()) {
            for (Cell cell : cells(workbook)) {
                assertThat(cell.getCellType()).isIn(CellType.STRING, CellType.NUMERIC, CellType.BLANK);
            }
            workbook.forEach(s -> assertThat(s.getHyperlinkList()).isEmpty());
        }
    }

    @ParameterizedTest
    @EnumSource
    void textThatLooksLikeAFormulaIsAQuotedString(Book book) throws IOException {
        try (XSSFWorkbook workbook = book.read()) {
            List<Cell> live = cells(workbook).stream()
                    .filter(c -> c.getCellType() == CellType.STRING
                            && c.getStringCellValue().startsWith("="))
                    .toList();
            assertThat(live).isNotEmpty().allSatisfy(c -> {
                assertThat(c.getStringCellValue()).startsWith(MillLane.FORMULA);
                assertThat(c.getCellStyle().getQuotePrefixed()).isTrue();
            });
        }
    }

    @ParameterizedTest
    @EnumSource
    void headingsStayInViewAndAreRepeatedAndFiltered(Book book) throws IOException {
        try (XSSFWorkbook workbook = book.read()) {
            for (int i = 1; i < workbook.getNumberOfSheets(); i++) {
                XSSFSheet sheet = workbook.getSheetAt(i);
                assertThat(sheet.getPaneInformation().isFreezePane())
                        .as(sheet.getSheetName())
                        .isTrue();
                assertThat(sheet.getPaneInformation().getHorizontalSplitPosition())
                        .isEqualTo((short) 1);
                assertThat(sheet.getRepeatingRows().getLastRow()).isZero();
                assertThat(sheet.getCTWorksheet().getAutoFilter().getRef())
                        .endsWith(String.valueOf(sheet.getLastRowNum() + 1));
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void everySheetPrintsOnA4LandscapeWithDropRulesAndPageNumbers(Book book) throws IOException {
        try (XSSFWorkbook workbook = book.read()) {
            for (var s : workbook) {
                assertThat(s.getPrintSetup().getPaperSize()).isEqualTo(PrintSetup.A4_PAPERSIZE);
                assertThat(s.getPrintSetup().getLandscape()).isTrue();
                assertThat(s.getFitToPage()).isTrue();
                assertThat(s.getPrintSetup().getFitHeight()).isZero();
                assertThat(s.getHeader().getLeft()).isEqualTo("Mill Lane && Sons, drop 3");
                assertThat(s.getHeader().getRight()).isEqualTo("Demo rules for concealed-fixed sheeting 1.2");
                assertThat(s.getFooter().getRight()).isEqualTo("Page &P of &N");
            }
        }
    }

    @Test
    void aNonConformanceIsPrintedOnOnePagesWidthUpToItsElements() throws IOException {
        try (XSSFWorkbook workbook = Book.NON_CONFORMANCES.read()) {
            XSSFSheet sheet = workbook.getSheet("Non-conformances");
            assertThat(workbook.getPrintArea(workbook.getSheetIndex(sheet))).endsWith("$A$1:$L$4");
            assertThat(sheet.getRow(0).getCell(11).getStringCellValue()).isEqualTo("Elements and their GlobalIds");
            assertThat(sheet.getPrintSetup().getFitWidth()).isEqualTo((short) 1);
        }
    }

    @ParameterizedTest
    @EnumSource
    void theCoverSaysFirstWhatCameOutAndWhereTheValuesComeFrom(Book book) throws IOException {
        try (XSSFWorkbook workbook = book.read()) {
            XSSFSheet cover = workbook.getSheet("Cover");
            assertThat(cover.getRow(1).getCell(0).getStringCellValue())
                    .isEqualTo("✗ 2 findings do not conform, 1 was not assessed, 1 element was not read");
            assertThat(cover.getRow(2).getCell(0).getStringCellValue()).contains("invented for the demo");
        }
    }

    @ParameterizedTest
    @CsvSource({
        "QUANTITIES, Planes, Pitch (°), 10",
        "QUANTITIES, Planes, Area (m²), 100",
        "QUANTITIES, Planes, Longest end span (mm), 1900",
        "QUANTITIES, Sheets, Total length (m), 192",
        "QUANTITIES, Sheets, Count, 24",
        "QUANTITIES, Edges, Length (m), 12.5",
        "QUANTITIES, Waste, Ordered, 196",
        "QUANTITIES, Supports, Contact face under skin (mm), 150",
        "NON_CONFORMANCES, Non-conformances, Measured, 1.5",
        "NON_CONFORMANCES, Non-conformances, Margin, -0.5",
        "NON_CONFORMANCES, Non-conformances, Y (m), 5300001.034",
        "NON_CONFORMANCES, Conforming, Limit, 2",
        "NON_CONFORMANCES, Rules, ✗ Does not conform, 1"
    })
    void numbersAreNumbersUnderTheirHeading(Book book, String sheet, String heading, double first) throws IOException {
        try (XSSFWorkbook workbook = book.read()) {
            XSSFSheet table = workbook.getSheet(sheet);
            Cell head = StreamSupport.stream(table.getRow(0).spliterator(), false)
                    .filter(c -> c.getStringCellValue().equals(heading))
                    .findFirst()
                    .orElseThrow();
            Cell cell = table.getRow(1).getCell(head.getColumnIndex());
            assertThat(cell.getCellType()).isEqualTo(CellType.NUMERIC);
            assertThat(cell.getNumericCellValue()).isEqualTo(first);
            assertThat(cell.getCellStyle().getDataFormatString()).contains("0");
        }
    }

    @Test
    void notAssessedStandsApartFromWhatConforms() throws IOException {
        try (XSSFWorkbook workbook = Book.NON_CONFORMANCES.read()) {
            assertThat(workbook.getSheet("Not assessed").getRow(1).getCell(1).getStringCellValue())
                    .isEqualTo("? not assessed");
            assertThat(workbook.getSheet("Conforming").getLastRowNum()).isEqualTo(1);
            assertThat(workbook.getSheet("Non-conformances").getLastRowNum()).isEqualTo(3);
        }
    }

    @Test
    void theDocumentStatesTheTimeItWasGiven() throws IOException {
        try (XSSFWorkbook workbook = Book.QUANTITIES.read()) {
            var core = workbook.getProperties().getCoreProperties();
            var part = core.getUnderlyingProperties();
            assertThat(part.getCreatedPropertyString()).isEqualTo("2026-03-02T07:00:00Z");
            assertThat(part.getModifiedPropertyString()).isEqualTo("2026-03-02T07:00:00Z");
            assertThat(core.getTitle()).isEqualTo("Quantities: Mill Lane & Sons, drop 3");
        }
    }

    @ParameterizedTest
    @EnumSource
    void noTemporaryFileIsMade(Book book) {
        TempFileCreationStrategy refusing = new TempFileCreationStrategy() {
            @Override
            public File createTempFile(String prefix, String suffix) {
                throw new IllegalStateException("temporary file " + prefix);
            }

            @Override
            public File createTempDirectory(String prefix) {
                throw new IllegalStateException("temporary folder " + prefix);
            }
        };
        TempFile.setThreadLocalTempFileCreationStrategy(refusing);
        try {
            assertThatCode(book::bytes).doesNotThrowAnyException();
        } finally {
            TempFile.setThreadLocalTempFileCreationStrategy(null);
        }
    }

    @Test
    void warmingUpWritesAWorkbookToNowhere() {
        assertThatCode(Workbooks::warmUp).doesNotThrowAnyException();
    }

    @ParameterizedTest
    @EnumSource
    void theSheetsReadAsReviewed(Book book) throws IOException {
        try (XSSFWorkbook workbook = book.read()) {
            Golden.assertMatches(book.name().toLowerCase(Locale.ROOT).replace('_', '-') + ".txt", dump(workbook));
        }
    }

    @Test
    void whatChangedSinceAnEarlierResultHasASheetInBothWorkbooks() throws IOException {
        CheckResult compared = InventedGable.drop(1).since(MillLane.result());
        ByteArrayOutputStream findings = new ByteArrayOutputStream();
        Workbooks.nonConformances(compared, findings);
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(findings.toByteArray()))) {
            assertThat(workbook.getSheet("Changes"))
                    .extracting(row -> row.getCell(0).getStringCellValue())
                    .startsWith("Change", "+ new")
                    .endsWith("− gone");
            assertThat(dump(workbook)).contains("2 new, 0 changed, 4 gone, 0 as before");
        }
        ByteArrayOutputStream quantities = new ByteArrayOutputStream();
        Workbooks.quantities(compared, quantities);
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(quantities.toByteArray()))) {
            assertThat(workbook.getSheet("Changes").getLastRowNum()).isPositive();
        }
        try (XSSFWorkbook workbook = Book.QUANTITIES.read()) {
            assertThat(workbook.getSheet("Changes")).isNull();
        }
    }

    private static List<Cell> cells(XSSFWorkbook workbook) {
        List<Cell> cells = new ArrayList<>();
        workbook.forEach(sheet -> sheet.forEach(row -> row.forEach(cells::add)));
        return cells;
    }

    private static String dump(XSSFWorkbook workbook) {
        StringBuilder text = new StringBuilder();
        workbook.forEach(sheet -> {
            text.append("== ").append(sheet.getSheetName()).append('\n');
            sheet.forEach(row -> text.append(line(row)).append('\n'));
        });
        return text.toString();
    }

    private static String line(Row row) {
        return String.join(
                        " | ",
                        StreamSupport.stream(row.spliterator(), false)
                                .map(c -> c.getCellType() == CellType.NUMERIC
                                        ? String.valueOf(c.getNumericCellValue())
                                        : c.toString().replace("\n", " ⏎ "))
                                .toList())
                .stripTrailing();
    }
}
