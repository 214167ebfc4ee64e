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
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.TargetMode;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.util.TempFile;
import org.apache.poi.util.TempFileCreationStrategy;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;

class WorkbooksTest {
    enum Drop {
        MILL_LANE,
        GABLES
    }

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
            return bytes(MillLane.result());
        }

        byte[] bytes(CheckResult result) throws IOException {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            write(result, out);
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
    void noCellIsAFormulaAndLinksLeadToRowsOfTheWorkbookItself(Book book) throws IOException {
        try (XSSFWorkbook workbook = book.read()) {
            for (Cell cell : cells(workbook)) {
                assertThat(cell.getCellType()).isIn(CellType.STRING, CellType.NUMERIC, CellType.BLANK);
            }
            List<XSSFHyperlink> links = links(workbook);
            assertThat(links).isNotEmpty().allSatisfy(link -> {
                assertThat(link.getType()).isEqualTo(HyperlinkType.DOCUMENT);
                CellReference to = new CellReference(link.getLocation());
                assertThat((Object) workbook.getSheet(to.getSheetName()).getRow(to.getRow()))
                        .as(link.getLocation())
                        .isNotNull();
            });
        }
    }

    @ParameterizedTest
    @EnumSource
    void noPartPointsOutOfTheWorkbook(Book book) throws IOException, InvalidFormatException {
        try (XSSFWorkbook workbook = book.read()) {
            for (PackagePart part : workbook.getPackage().getParts()) {
                if (!part.isRelationshipPart()) {
                    part.getRelationships()
                            .forEach(r -> assertThat(r.getTargetMode())
                                    .as(part.getPartName() + " to " + r.getTargetURI())
                                    .isEqualTo(TargetMode.INTERNAL));
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "MILL_LANE, QUANTITIES, Taken from, Plane, Planes, 0",
        "MILL_LANE, QUANTITIES, Taken from, Item id, Order, 9",
        "MILL_LANE, QUANTITIES, Order, Item id, Taken from, 9",
        "MILL_LANE, QUANTITIES, Planes, Plane, Roof plan, 1",
        "MILL_LANE, QUANTITIES, Roof plan, Plane, Planes, 0",
        "MILL_LANE, QUANTITIES, Sheets, Plane, Planes, 0",
        "GABLES, NON_CONFORMANCES, Non-conformances, Plane, Roof plan, 1",
        "GABLES, QUANTITIES, Findings, Plane, Planes, 0"
    })
    void aLinkLeadsToARowThatNamesTheSameThing(
            Drop drop, Book book, String sheet, String heading, String to, int column) throws IOException {
        CheckResult result = drop == Drop.MILL_LANE ? MillLane.result() : InventedGable.drop(2);
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(book.bytes(result)))) {
            XSSFSheet table = workbook.getSheet(sheet);
            int from = StreamSupport.stream(table.getRow(0).spliterator(), false)
                    .filter(c -> c.getStringCellValue().equals(heading))
                    .findFirst()
                    .orElseThrow()
                    .getColumnIndex();
            List<XSSFHyperlink> links = table.getHyperlinkList().stream()
                    .filter(l -> l.getFirstColumn() == from)
                    .toList();
            assertThat(links).isNotEmpty().allSatisfy(link -> {
                CellReference target = new CellReference(link.getLocation());
                assertThat(target.getSheetName()).isEqualTo(to);
                String there = workbook.getSheet(to)
                        .getRow(target.getRow())
                        .getCell(column)
                        .getStringCellValue();
                for (int row = link.getFirstRow(); row <= link.getLastRow(); row++) {
                    assertThat(table.getRow(row)
                                    .getCell(from)
                                    .getStringCellValue()
                                    .lines()
                                    .findFirst())
                            .contains(there);
                }
            });
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
                if (sheet.getSheetName().equals("Roof plan")) {
                    continue;
                }
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

    @ParameterizedTest
    @EnumSource
    void theCoverHasAChartOfItsCounts(Book book) throws IOException {
        try (XSSFWorkbook workbook = book.read()) {
            XSSFSheet cover = workbook.getSheet("Cover");
            var chart = cover.getDrawingPatriarch().getCharts().get(0).getCTChart();
            var bars = chart.getPlotArea().getBarChartArray(0).getSerArray(0);
            CellRangeAddress names =
                    CellRangeAddress.valueOf(bars.getCat().getStrRef().getF());
            CellRangeAddress values =
                    CellRangeAddress.valueOf(bars.getVal().getNumRef().getF());
            for (int i = 0; i < 4; i++) {
                assertThat(bars.getCat().getStrRef().getStrCache().getPtArray(i).getV())
                        .isEqualTo(cover.getRow(names.getFirstRow() + i)
                                .getCell(names.getFirstColumn())
                                .getStringCellValue());
                assertThat(Double.parseDouble(bars.getVal()
                                .getNumRef()
                                .getNumCache()
                                .getPtArray(i)
                                .getV()))
                        .isEqualTo(cover.getRow(values.getFirstRow() + i)
                                .getCell(values.getFirstColumn())
                                .getNumericCellValue());
            }
        }
    }

    @ParameterizedTest
    @EnumSource
    void theRoofPlanHasAPictureOfEachBuilding(Book book) throws IOException {
        CheckResult gable = InventedGable.drop(1);
        long buildings =
                gable.planes().stream().map(PlaneResult::building).distinct().count();
        try (XSSFWorkbook workbook = new XSSFWorkbook(new ByteArrayInputStream(book.bytes(gable)))) {
            assertThat(workbook.getSheet("Roof plan").getDrawingPatriarch().getShapes())
                    .hasSize((int) buildings)
                    .hasOnlyElementsOfType(XSSFPicture.class);
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

    private static List<XSSFHyperlink> links(XSSFWorkbook workbook) {
        List<XSSFHyperlink> links = new ArrayList<>();
        workbook.forEach(s -> ((XSSFSheet) s).getHyperlinkList().forEach(links::add));
        return links;
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
