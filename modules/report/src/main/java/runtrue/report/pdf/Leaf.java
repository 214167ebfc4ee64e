package runtrue.report.pdf;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;

/** One A4 page that is filled from its top. Points, y from the foot. */
final class Leaf implements AutoCloseable {
    static final double LEFT = 51;
    static final double RIGHT = PDRectangle.A4.getWidth() - 42;
    static final double WIDTH = RIGHT - LEFT;
    static final Color INK = new Color(0x1C2529);
    static final Color QUIET = new Color(0x5B6B73);
    static final Color ACCENT = new Color(0x1F4E5F);
    static final Color RULE = new Color(0xC9D3D7);

    private static final String CUT = "… cut here; the workbook has all of it";
    private static final double TOP = PDRectangle.A4.getHeight() - 42;
    private static final double FOOT = 54;

    /** Distance of base lines by the size of the type. */
    private static final double LEADING = 1.32;

    /** Half the width of a stroke around letters that makes them bold, by their size. */
    private static final double BOLD = 0.028;

    private final Face face;
    private final PDPage page;
    private final PDPageContentStream content;
    private double y = TOP;

    Leaf(PDDocument document, Face face) throws IOException {
        this.face = face;
        page = new PDPage(PDRectangle.A4);
        document.addPage(page);
        content = new PDPageContentStream(document, page);
    }

    PDPage page() {
        return page;
    }

    PDPageContentStream content() {
        return content;
    }

    double y() {
        return y;
    }

    /** Whether something of a height still fits above the foot. */
    boolean hasRoom(double height) {
        return y - height > FOOT;
    }

    void skip(double height) {
        y -= height;
    }

    /** Text over the whole width; moves on below it. */
    void text(String text, double size, boolean bold, Color color) throws IOException {
        column(text, LEFT, WIDTH, size, bold, color);
    }

    /** Text in a column of its own; moves on below it. At the foot of the page it is cut, and says so. */
    void column(String text, double x, double width, double size, boolean bold, Color color) throws IOException {
        for (String line : face.lines(text, size, width)) {
            if (!hasRoom(2 * size * LEADING)) {
                y -= size * LEADING;
                put(CUT, x, y, size, false, QUIET);
                return;
            }
            y -= size * LEADING;
            put(line, x, y, size, bold, color);
        }
    }

    /** Height that a text takes in a column. */
    double height(String text, double width, double size) {
        return face.lines(text, size, width).size() * size * LEADING;
    }

    /** Cells beside each other; moves on below the highest. */
    void row(List<String> cells, List<Double> widths, double size, boolean bold, Color color) throws IOException {
        double start = y;
        double lowest = y;
        double x = LEFT;
        for (int i = 0; i < cells.size(); i++) {
            y = start;
            column(cells.get(i), x, widths.get(i) - 6, size, bold, color);
            lowest = Math.min(lowest, y);
            x += widths.get(i);
        }
        y = lowest;
    }

    /** A hair line over the whole width, below what was written. */
    void rule() throws IOException {
        y -= 5;
        rule(LEFT, RIGHT, y);
        y -= 2;
    }

    void rule(double from, double to, double at) throws IOException {
        content.setStrokingColor(RULE);
        content.setLineWidth(0.7f);
        content.setLineDashPattern(new float[0], 0);
        content.moveTo((float) from, (float) at);
        content.lineTo((float) to, (float) at);
        content.stroke();
    }

    /** One line of text whose base line starts at a place. */
    void put(String line, double x, double at, double size, boolean bold, Color color) throws IOException {
        String shown = face.shown(line);
        if (shown.isEmpty()) {
            return;
        }
        content.beginText();
        content.setFont(face.font(), (float) size);
        content.setNonStrokingColor(color);
        content.setStrokingColor(color);
        content.setLineWidth((float) (size * BOLD));
        content.setRenderingMode(bold ? RenderingMode.FILL_STROKE : RenderingMode.FILL);
        content.newLineAtOffset((float) x, (float) at);
        content.showText(shown);
        content.endText();
    }

    /** One line that ends at a place. */
    void putRight(String line, double right, double at, double size, Color color) throws IOException {
        put(line, right - face.width(face.shown(line), size), at, size, false, color);
    }

    @Override
    public void close() throws IOException {
        content.close();
    }
}
