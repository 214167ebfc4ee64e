package runtrue.report.sheet;

import java.util.List;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCreationHelper;
import org.apache.poi.xssf.usermodel.XSSFHyperlink;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes links within the workbook. They stand beside the rows, not in them, so that rows can be streamed. */
final class Links {
    /** Spreadsheet programs open no more on one sheet than some 65 thousand; a person follows far fewer. */
    private static final int MOST = 20_000;

    private Links() {}

    static void apply(List<Overlay.Linked> links, XSSFSheet sheet) {
        XSSFCreationHelper creation = sheet.getWorkbook().getCreationHelper();
        for (Overlay.Linked link : links.subList(0, Math.min(MOST, links.size()))) {
            XSSFHyperlink to = creation.createHyperlink(HyperlinkType.DOCUMENT);
            to.setLocation(link.to().location());
            to.setCellReference(
                    new CellRangeAddress(link.first(), link.last(), link.column(), link.column()).formatAsString());
            sheet.addHyperlink(to);
        }
    }
}
