package runtrue.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.report.rates.RateException;
import runtrue.report.rates.RateFiles;
import runtrue.result.build.RateList;

class RatesTest {
    @TempDir
    Path folder;

    private RateList csv(String text) throws IOException {
        Path file = folder.resolve("rates.csv");
        Files.writeString(file, text);
        return RateFiles.read(file);
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "`item,unit,rate,currency\nclip,box,12.50,EUR\n`",
                "`currency;rate;unit;item\r\nEUR;12.50;box;\"clip\"`",
                "`\uFEFFItem, Unit, Rate, Currency\n\nclip , box , 12.5 , EUR`"
            })
    void rates_are_read_from_csv(String text) throws IOException {
        assertThat(csv(text).entries())
                .singleElement()
                .satisfies(e -> assertThat(List.of(e.item(), e.unit(), e.rate(), e.currency()))
                        .containsExactly("clip", "box", 12.5, "EUR"));
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            delimiter = '|',
            value = {
                "clip,box,=1+1,EUR | rates.csv:2: \"=1+1\" is no rate",
                "clip,box,-3,EUR | \"-3\" is no rate",
                "clip,box,\"1,250\",EUR | \"1,250\" is no rate",
                "clip,box,3,=A1 | \"=A1\" is no currency",
                "clip,,3,EUR | item and unit must be given"
            })
    void what_is_no_rate_is_told_with_its_line(String row, String message) {
        assertThatThrownBy(() -> csv("item,unit,rate,currency\n" + row + "\n"))
                .isInstanceOf(RateException.class)
                .hasMessageContaining(message);
    }

    @Test
    void a_missing_heading_is_told() {
        assertThatThrownBy(() -> csv("item,unit,price\nclip,box,3\n"))
                .hasMessageContaining("the first row must have the headings item, unit, rate, currency");
    }

    @Test
    void rates_are_read_from_a_workbook_but_never_a_formula() throws IOException {
        Path file = folder.resolve("rates.xlsx");
        write(file, false);
        assertThat(RateFiles.read(file).entries()).containsExactly(new RateList.Entry("clip", "box", 12.5, "EUR", 2));
        write(file, true);
        assertThatThrownBy(() -> RateFiles.read(file)).hasMessageContaining("rates.xlsx:2: \"a formula\" is no rate");
    }

    private static void write(Path file, boolean formula) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFSheet sheet = book.createSheet("Rates");
            Row head = sheet.createRow(0);
            List<String> headings = List.of("item", "unit", "rate", "currency");
            for (int i = 0; i < headings.size(); i++) {
                head.createCell(i).setCellValue(headings.get(i));
            }
            Row row = sheet.createRow(1);
            row.createCell(0).setCellValue("clip");
            row.createCell(1).setCellValue("box");
            row.createCell(3).setCellValue("EUR");
            if (formula) {
                row.createCell(2).setCellFormula("25/2");
            } else {
                row.createCell(2).setCellValue(12.5);
            }
            book.write(out);
        }
    }

    @Test
    void a_file_that_is_no_workbook_is_told() throws IOException {
        Path file = folder.resolve("rates.xlsx");
        Files.writeString(file, "item,unit,rate,currency\n");
        assertThatThrownBy(() -> RateFiles.read(file))
                .isInstanceOf(RateException.class)
                .hasMessageContaining("is no workbook");
    }

    /** 196 m2 from 49 sheets of 8 m at 9.85 for a metre: 3861.20; a box of clips 180.005: 180.01; 30 kg at 1.2: 36. */
    @Test
    void costs_are_formulas_over_the_quantities_and_nothing_else_is() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Workbooks.quantities(PricedMillLane.result(), out);
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
            XSSFSheet order = book.getSheet("Order");
            assertThat(order.getRow(2).getCell(13).getCellFormula()).isEqualTo("ROUND(D3*F3*K3,2)");
            assertThat(order.getRow(2).getCell(13).getNumericCellValue()).isEqualTo(3861.20);
            assertThat(order.getRow(3).getCell(13).getNumericCellValue()).isEqualTo(180.01);
            assertThat(order.getRow(4).getCell(13).getNumericCellValue()).isEqualTo(36.0);
            assertThat(order.getRow(5).getCell(11).getStringCellValue()).isEqualTo("no rate");
            XSSFSheet cost = book.getSheet("Cost");
            assertThat(cost.getRow(1).getCell(0).getStringCellValue()).isEqualTo("EUR");
            assertThat(cost.getRow(1).getCell(1).getNumericCellValue()).isEqualTo(4041.21);
            assertThat(cost.getRow(2).getCell(1).getNumericCellValue()).isEqualTo(36.0);
            book.sheetIterator()
                    .forEachRemaining(sheet -> sheet.forEach(row -> row.forEach(RatesTest::isNoOtherFormula)));
        }
    }

    private static void isNoOtherFormula(Cell cell) {
        if (cell.getCellType() == CellType.FORMULA) {
            assertThat(cell.getCellFormula()).matches("ROUND\\([DFGIK0-9*]+,2\\)|SUMPRODUCT\\([A-Za-z0-9!$:=()*]+\\)");
        }
    }
}
