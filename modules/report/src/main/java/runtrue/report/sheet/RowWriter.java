package runtrue.report.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;

/** Writes the rows of a page. Texts become string cells whatever they look like; formulas are only those that the program makes itself. */
final class RowWriter {
    private static final int DECIMALS = 9;

    private RowWriter() {}

    static void write(Page page, Sheet sheet, Styles styles) {
        int number = 0;
        for (Line line : page.lines()) {
            Row row = sheet.createRow(number++);
            if (line.height() > 0) {
                row.setHeightInPoints(line.height());
            }
            for (int column = 0; column < line.cells().size(); column++) {
                write(line.cells().get(column), row.createCell(column), styles);
            }
        }
    }

    /** Differences of rounded lengths carry digits that no one measured: 0.3000000000000007. */
    private static double rounded(double value) {
        return BigDecimal.valueOf(value)
                .setScale(DECIMALS, RoundingMode.HALF_EVEN)
                .doubleValue();
    }

    private static CellStyle style(Cell cell, Styles styles) {
        return cell instanceof Cell.Text text && CellText.looksLive(text.text())
                ? styles.quoted(cell.look())
                : styles.of(cell.look());
    }

    private static void write(Cell cell, org.apache.poi.ss.usermodel.Cell target, Styles styles) {
        target.setCellStyle(style(cell, styles));
        if (cell instanceof Cell.Text text) {
            target.setCellValue(CellText.clean(text.text()));
        } else if (cell instanceof Cell.Figure figure) {
            target.setCellValue(rounded(figure.value()));
        } else if (cell instanceof Cell.Formula formula) {
            target.setCellFormula(formula.formula());
            target.setCellValue(rounded(formula.value()));
        }
    }
}
