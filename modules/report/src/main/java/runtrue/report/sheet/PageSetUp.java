package runtrue.report.sheet;

import java.util.List;
import org.apache.poi.ss.usermodel.Footer;
import org.apache.poi.ss.usermodel.Header;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import runtrue.report.xml.LegalText;

/** Everything of a sheet but its rows: widths, frozen headings, filters, print set-up. */
final class PageSetUp {
    private static final int WIDTH_UNITS_PER_CHARACTER = 256;

    /** The file format allows 255 characters for a header or footer with its codes; three parts share them. */
    private static final int LONGEST_PART = 70;

    /** What fits across A4 landscape at some two thirds of the size on the screen. */
    private static final int CHARACTERS_ACROSS = 230;

    /** In inches. */
    private static final double SIDE_MARGIN = 0.4;

    /** Of a column's width in the standard font, 7 pixels at 96 to the inch; and what each column has beside. */
    private static final double POINTS_PER_CHARACTER = 5.25;

    private static final double COLUMN_MARGIN = 3.75;

    /** Of A4 landscape between its margins, in points. */
    private static final double PRINTED_WIDTH = 841.9 - 2 * 72 * SIDE_MARGIN;

    /** For fonts that stand in for Arial. */
    private static final double SPARE = 0.96;

    private PageSetUp() {}

    static void apply(Page page, Sheet sheet, BookInfo info) {
        List<Integer> widths = page.widths();
        for (int i = 0; i < widths.size(); i++) {
            sheet.setColumnWidth(i, widths.get(i) * WIDTH_UNITS_PER_CHARACTER);
        }
        sheet.setDisplayGridlines(page.heads() > 0);
        heads(page, sheet);
        merge(page, sheet);
        print(page, sheet);
        headerAndFooter(page, sheet, info);
    }

    private static void heads(Page page, Sheet sheet) {
        if (page.heads() == 0) {
            return;
        }
        sheet.createFreezePane(page.frozenColumns(), page.heads());
        sheet.setRepeatingRows(new CellRangeAddress(0, page.heads() - 1, -1, -1));
        if (page.filtered()) {
            sheet.setAutoFilter(new CellRangeAddress(
                    page.heads() - 1, page.count() - 1, 0, page.widths().size() - 1));
        }
    }

    private static void merge(Page page, Sheet sheet) {
        if (!page.merging()) {
            return;
        }
        int last = page.widths().size() - 1;
        int row = 0;
        for (Line line : page.lines()) {
            int first = line.cells().size() - 1;
            if (line.merged() && first < last - line.free()) {
                sheet.addMergedRegionUnsafe(new CellRangeAddress(row, row, first, last - line.free()));
            }
            row++;
        }
    }

    /** Wide tables go over several pages side by side, each with the frozen columns, so that they stay readable. */
    private static void print(Page page, Sheet sheet) {
        PrintSetup print = sheet.getPrintSetup();
        print.setPaperSize(PrintSetup.A4_PAPERSIZE);
        print.setLandscape(true);
        sheet.setFitToPage(true);
        if (page.printed() < page.widths().size()) {
            Workbook book = sheet.getWorkbook();
            book.setPrintArea(book.getSheetIndex(sheet), 0, page.printed() - 1, 0, page.count() - 1);
        }
        sheet.setMargin(PageMargin.LEFT, SIDE_MARGIN);
        sheet.setMargin(PageMargin.RIGHT, SIDE_MARGIN);
        int width = page.widths().stream()
                .limit(page.printed())
                .mapToInt(Integer::intValue)
                .sum();
        int pages = (width + CHARACTERS_ACROSS - 1) / CHARACTERS_ACROSS;
        print.setFitWidth((short) pages);
        if (pages > 1 && page.frozenColumns() > 0) {
            sheet.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, page.frozenColumns() - 1));
        }
        print.setFitHeight((short) 0);
        breaks(page, sheet);
        sheet.setHorizontallyCenter(true);
    }

    /** Not all spreadsheet programs heed breaks where they fit the width themselves, so the scale is stated instead. */
    private static void breaks(Page page, Sheet sheet) {
        if (page.over().breaks().isEmpty()) {
            return;
        }
        double points = page.widths().stream()
                .mapToDouble(w -> w * POINTS_PER_CHARACTER + COLUMN_MARGIN)
                .sum();
        double scale = Math.min(1, SPARE * PRINTED_WIDTH / points);
        sheet.setFitToPage(false);
        sheet.getPrintSetup().setScale((short) Math.floor(100 * scale));
        page.over().breaks().forEach(row -> sheet.setRowBreak(row - 1));
    }

    private static void headerAndFooter(Page page, Sheet sheet, BookInfo info) {
        Header header = sheet.getHeader();
        header.setLeft(part(info.drop()));
        header.setCenter(part(info.title() + " – " + page.name()));
        header.setRight(part(info.ruleSet()));
        Footer footer = sheet.getFooter();
        footer.setLeft(part(info.program()));
        footer.setCenter(part(info.stamp()));
        footer.setRight("Page &P of &N");
    }

    /** An ampersand starts a code there, two stand for one. */
    private static String part(String text) {
        String clean = CellText.clean(text).replace('\n', ' ');
        return LegalText.shortened(clean, LONGEST_PART).replace("&", "&&");
    }
}
