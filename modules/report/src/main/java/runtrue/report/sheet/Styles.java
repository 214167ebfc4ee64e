package runtrue.report.sheet;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.FontUnderline;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The styles of one workbook, all made at once because they are written before the rows. One accent colour; outcomes have a tint besides their word. */
final class Styles {
    private static final String ACCENT = "1F4E5F";
    private static final String RULE = "C9D3D7";

    /** The file format wants four bytes of a colour, the first for its opacity. */
    private static final byte OPAQUE = (byte) 0xFF;

    private static final int TEXT_SIZE = 10;
    private static final int BANNER_SIZE = 14;

    private final XSSFWorkbook book;
    private final Map<Look, XSSFCellStyle> plain = new EnumMap<>(Look.class);
    private final Map<Look, XSSFCellStyle> quoted = new EnumMap<>(Look.class);

    Styles(XSSFWorkbook book) {
        this.book = book;
        XSSFFont standard = book.getFontAt(0);
        standard.setFontName("Arial");
        standard.setFontHeightInPoints((short) 10);
        for (Look look : Look.values()) {
            plain.put(look, make(look));
            if (!look.isNumber()) {
                XSSFCellStyle style = make(look);
                style.setQuotePrefixed(true);
                quoted.put(look, style);
            }
        }
    }

    XSSFCellStyle of(Look look) {
        return Objects.requireNonNull(plain.get(look));
    }

    /** The same look for a text that must not come alive when it is typed again. */
    XSSFCellStyle quoted(Look look) {
        return Objects.requireNonNull(quoted.get(look));
    }

    private XSSFCellStyle make(Look look) {
        XSSFCellStyle style = book.createCellStyle();
        style.setVerticalAlignment(VerticalAlignment.TOP);
        if (look.isNumber()) {
            style.setDataFormat(book.createDataFormat().getFormat(look.numberFormat()));
        }
        switch (look) {
            case TITLE -> style.setFont(font(18, true, ACCENT));
            case SECTION -> section(style);
            case HEADER -> header(style, HorizontalAlignment.LEFT);
            case NUMBER_HEADER -> header(style, HorizontalAlignment.RIGHT);
            case LABEL -> style.setFont(font(10, true, ACCENT));
            case WARNING -> warning(style);
            case CONFORMS -> outcome(style, "E3F1E5", "1B5E20", TEXT_SIZE);
            case DOES_NOT_CONFORM -> outcome(style, "F9DEDC", "8C1D18", TEXT_SIZE);
            case NOT_ASSESSED -> outcome(style, "FFF1CC", "6B4E00", TEXT_SIZE);
            case CONCEDED -> outcome(style, "E4E2F3", "3B3478", TEXT_SIZE);
            case ALL_CONFORM -> outcome(style, "E3F1E5", "1B5E20", BANNER_SIZE);
            case SOME_DO_NOT_CONFORM -> outcome(style, "F9DEDC", "8C1D18", BANNER_SIZE);
            case SOME_NOT_ASSESSED -> outcome(style, "FFF1CC", "6B4E00", BANNER_SIZE);
            case NOTE -> style.setWrapText(true);
            case LABEL_LINK -> {
                style.setFont(underlined());
                style.getFont().setBold(true);
            }
            case NOTE_COUNT, NOTE_MEASURE -> {}
            case LINK -> {
                boxed(style);
                indented(style);
                style.setWrapText(true);
                style.setFont(underlined());
            }
            case LINK_COUNT -> {
                boxed(style);
                style.setFont(underlined());
            }
            case WRAPPED -> {
                boxed(style);
                indented(style);
                style.setWrapText(true);
            }
            case TEXT -> {
                boxed(style);
                indented(style);
            }
            default -> boxed(style);
        }
        return style;
    }

    private void section(XSSFCellStyle style) {
        style.setFont(font(12, true, ACCENT));
        style.setVerticalAlignment(VerticalAlignment.BOTTOM);
        style.setBorderBottom(BorderStyle.MEDIUM);
        style.setBottomBorderColor(color(ACCENT));
    }

    private void header(XSSFCellStyle style, HorizontalAlignment alignment) {
        fill(style, ACCENT);
        style.setFont(font(10, true, "FFFFFF"));
        style.setWrapText(true);
        style.setAlignment(alignment);
        if (alignment == HorizontalAlignment.LEFT) {
            style.setIndention((short) 1);
        }
        style.setVerticalAlignment(VerticalAlignment.CENTER);
        style.setBorderRight(BorderStyle.THIN);
        style.setRightBorderColor(color(RULE));
    }

    private void warning(XSSFCellStyle style) {
        fill(style, "FFF1CC");
        style.setFont(font(10, true, "6B4E00"));
        style.setWrapText(true);
    }

    private void outcome(XSSFCellStyle style, String fill, String text, int size) {
        fill(style, fill);
        style.setFont(font(size, true, text));
        indented(style);
        style.setWrapText(true);
        if (size == BANNER_SIZE) {
            style.setVerticalAlignment(VerticalAlignment.CENTER);
        } else {
            boxed(style);
        }
    }

    /** Numbers end where the next column's text begins. */
    private static void indented(XSSFCellStyle style) {
        style.setAlignment(HorizontalAlignment.LEFT);
        style.setIndention((short) 1);
    }

    private static void boxed(XSSFCellStyle style) {
        style.setBorderBottom(BorderStyle.THIN);
        style.setBottomBorderColor(color(RULE));
        style.setBorderRight(BorderStyle.THIN);
        style.setRightBorderColor(color(RULE));
    }

    private static void fill(XSSFCellStyle style, String rgb) {
        style.setFillForegroundColor(color(rgb));
        style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
    }

    private XSSFFont font(int points, boolean bold, String rgb) {
        XSSFFont font = book.createFont();
        font.setFontName("Arial");
        font.setFontHeightInPoints((short) points);
        font.setBold(bold);
        font.setColor(color(rgb));
        return font;
    }

    /** A line under the text says that it leads somewhere; the colour alone would not. */
    private XSSFFont underlined() {
        XSSFFont font = font(TEXT_SIZE, false, ACCENT);
        font.setUnderline(FontUnderline.SINGLE);
        return font;
    }

    private static XSSFColor color(String rgb) {
        int value = Integer.parseInt(rgb, 16);
        return new XSSFColor(new byte[] {OPAQUE, (byte) (value >> 16), (byte) (value >> 8), (byte) value}, null);
    }
}
