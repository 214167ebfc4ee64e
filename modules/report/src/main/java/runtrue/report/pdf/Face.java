package runtrue.report.pdf;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The one typeface of a document, embedded: Liberation Sans, which comes with the PDF library. Characters that it lacks
 * are shown as a question mark rather than left out.
 */
final class Face implements AutoCloseable {
    private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final String UNKNOWN = "?";

    private final TrueTypeFont file;
    private final PDFont font;
    private final Map<Integer, Double> widths = new HashMap<>();

    private Face(TrueTypeFont file, PDFont font) {
        this.file = file;
        this.font = font;
    }

    /**
     * To be closed after the document is saved. Without ligatures: looking for them takes most of the time of a page, and
     * copied text reads better without.
     */
    static Face in(PDDocument document) throws IOException {
        try (InputStream data = PDDocument.class.getResourceAsStream(FILE)) {
            if (data == null) {
                throw new IOException("The PDF library lacks its typeface " + FILE);
            }
            TrueTypeFont file = new TTFParser(true).parse(new RandomAccessReadBuffer(data));
            file.setEnableGsub(false);
            return new Face(file, PDType0Font.load(document, file, true));
        }
    }

    @Override
    public void close() throws IOException {
        file.close();
    }

    PDFont font() {
        return font;
    }

    /** The text as it can be shown. */
    String shown(String text) {
        StringBuilder shown = new StringBuilder();
        text.codePoints().forEach(c -> shown.append(has(c) ? Character.toString(c) : UNKNOWN));
        return shown.toString();
    }

    /** Width of a shown text, points. */
    double width(String shown, double size) {
        return shown.codePoints().mapToDouble(this::width).sum() * size;
    }

    /** Lines no wider than given, broken between words and, where one word is wider, within it. */
    List<String> lines(String text, double size, double width) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\\R", -1)) {
            String line = "";
            for (String word : shown(paragraph).split(" ", -1)) {
                String longer = line.isEmpty() ? word : line + " " + word;
                if (width(longer, size) <= width) {
                    line = longer;
                    continue;
                }
                if (!line.isEmpty()) {
                    lines.add(line);
                }
                line = word;
                while (width(line, size) > width && line.length() > 1) {
                    int cut = fitting(line, size, width);
                    lines.add(line.substring(0, cut));
                    line = line.substring(cut);
                }
            }
            lines.add(line);
        }
        return lines;
    }

    private int fitting(String word, double size, double width) {
        int cut = word.offsetByCodePoints(0, 1);
        while (cut < word.length()) {
            int next = word.offsetByCodePoints(cut, 1);
            if (width(word.substring(0, next), size) > width) {
                break;
            }
            cut = next;
        }
        return cut;
    }

    private boolean has(int c) {
        return width(c) >= 0 && !Character.isISOControl(c);
    }

    /** In parts of the size; less than nothing for a character that the typeface lacks. */
    private double width(int c) {
        return widths.computeIfAbsent(c, this::measured);
    }

    private double measured(int c) {
        try {
            return font.getStringWidth(Character.toString(c)) / 1000.0;
        } catch (IOException | IllegalArgumentException e) {
            return -1;
        }
    }
}
