package runtrue.report.sheet;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.openxml4j.exceptions.NotOfficeXmlFileException;
import org.apache.poi.openxml4j.exceptions.OpenXML4JRuntimeException;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.jspecify.annotations.Nullable;

/** The first sheet of somebody's workbook as texts. */
public final class SheetRows {
    /** Stands for a formula, whose stored value may be stale. */
    public static final String FORMULA = "a formula";

    private SheetRows() {}

    /**
     * Rows from the first on, blank cells as empty texts, numbers in plain figures.
     *
     * @throws IOException when it is no workbook
     */
    public static List<List<String>> of(Path file) throws IOException {
        try (var in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            Sheet sheet = book.getSheetAt(0);
            List<List<String>> rows = new ArrayList<>();
            for (int i = 0; i <= sheet.getLastRowNum(); i++) {
                rows.add(cells(sheet.getRow(i)));
            }
            return rows;
        } catch (NotOfficeXmlFileException | OpenXML4JRuntimeException e) {
            throw new IOException("is no workbook: " + e.getMessage(), e);
        }
    }

    private static List<String> cells(@Nullable Row row) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; row != null && i < row.getLastCellNum(); i++) {
            org.apache.poi.ss.usermodel.Cell cell = row.getCell(i, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
            cells.add(
                    switch (cell.getCellType()) {
                        case STRING -> cell.getStringCellValue();
                        case NUMERIC ->
                            BigDecimal.valueOf(cell.getNumericCellValue()).toPlainString();
                        case BLANK -> "";
                        case FORMULA -> FORMULA;
                        default -> "neither a text nor a number";
                    });
        }
        return cells;
    }
}
