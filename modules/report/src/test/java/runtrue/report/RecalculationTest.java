package runtrue.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Another spreadsheet program works the costs out anew, from a workbook that no longer holds our own values. */
class RecalculationTest {
    private static final int COST = 13;
    private static final int RATE = 10;

    @TempDir
    Path folder;

    /** 49 x 8 x 9.85 = 3861.20, and at a rate of 10 a metre 3920; with 180.01 for a box that is 4041.21 and 4100.01. */
    @Test
    void libreoffice_comes_to_the_same_sums_and_follows_a_changed_rate() throws Exception {
        try (XSSFWorkbook same = recalculated(9.85)) {
            assertThat(cost(same, "Order", 2, COST)).isEqualTo(3861.20);
            assertThat(cost(same, "Order", 3, COST)).isEqualTo(180.01);
            assertThat(cost(same, "Cost", 1, 1)).isEqualTo(4041.21);
            assertThat(cost(same, "Cost", 2, 1)).isEqualTo(36);
        }
        try (XSSFWorkbook dearer = recalculated(10)) {
            assertThat(cost(dearer, "Order", 2, COST)).isEqualTo(3920);
            assertThat(cost(dearer, "Cost", 1, 1)).isEqualTo(4100.01);
        }
    }

    private static double cost(XSSFWorkbook book, String sheet, int row, int column) {
        return book.getSheet(sheet).getRow(row).getCell(column).getNumericCellValue();
    }

    private XSSFWorkbook recalculated(double rate) throws IOException, InterruptedException {
        Path in = folder.resolve("priced.xlsx");
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Workbooks.quantities(PricedMillLane.result(), bytes);
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(bytes.toByteArray()));
                OutputStream out = Files.newOutputStream(in)) {
            book.getSheet("Order").getRow(2).getCell(RATE).setCellValue(rate);
            book.sheetIterator().forEachRemaining(s -> s.forEach(r -> r.forEach(RecalculationTest::forget)));
            book.write(out);
        }
        Path converted = Files.createDirectories(folder.resolve("out"));
        Process process = new ProcessBuilder(
                        program().toString(),
                        "-env:UserInstallation=" + folder.resolve("profile").toUri(),
                        "--headless",
                        "--convert-to",
                        "xlsx",
                        "--outdir",
                        converted.toString(),
                        in.toString())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("log").toFile())
                .start();
        boolean ended = process.waitFor(180, TimeUnit.SECONDS);
        if (!ended) {
            process.destroyForcibly();
        }
        assertThat(ended).as("LibreOffice ended").isTrue();
        return new XSSFWorkbook(Files.newInputStream(converted.resolve("priced.xlsx")));
    }

    /** Takes the value that was stored with a formula away. */
    private static void forget(Cell cell) {
        if (cell.getCellType() == CellType.FORMULA) {
            cell.setCellFormula(cell.getCellFormula());
            ((XSSFCell) cell).getCTCell().unsetV();
        }
    }

    private static Path program() {
        List<String> path = Stream.of(String.valueOf(System.getenv("PATH")).split(File.pathSeparator))
                .toList();
        Path found = path.stream()
                .map(p -> Path.of(p, "soffice"))
                .filter(Files::isExecutable)
                .findFirst()
                .orElse(Path.of(""));
        assumeTrue(Files.isExecutable(found), "skipped: no soffice (LibreOffice) on the path to recalculate with");
        return found;
    }
}
