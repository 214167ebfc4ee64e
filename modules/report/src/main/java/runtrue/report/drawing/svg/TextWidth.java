package runtrue.report.drawing.svg;

import java.util.ArrayList;
import java.util.List;

/**
 * Widths of text without any font at hand, so that a drawing is the same on every machine: rounded up from the wider of the
 * common sans-serif faces, which leaves a little air with the narrower ones.
 */
final class TextWidth {
    private static final String THIN = "iljIft.,:;'|!()[]/\\ ·`";
    private static final String WIDE = "mwMWOQ@%—…";

    private TextWidth() {}

    /** In units of the letter size. */
    static double of(String text) {
        return text.codePoints().mapToDouble(TextWidth::of).sum();
    }

    private static double of(int letter) {
        if (THIN.indexOf(letter) >= 0) {
            return 0.4;
        }
        if (WIDE.indexOf(letter) >= 0) {
            return 1.0;
        }
        if (letter >= '0' && letter <= '9') {
            return 0.64;
        }
        if (letter >= 'a' && letter <= 'z') {
            return 0.61;
        }
        return letter < 0x500 ? 0.76 : 1.05;
    }

    /**
     * Lines no wider than given, broken between words, or within a word that is longer than a line.
     *
     * @param width in units of the letter size
     */
    static List<String> wrap(String text, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+", -1)) {
            String rest = word;
            if (line.length() > 0 && of(line + " " + rest) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            while (line.length() == 0 && of(rest) > width && rest.length() > 1) {
                int fit = fitting(rest, width);
                lines.add(rest.substring(0, fit));
                rest = rest.substring(fit);
            }
            line.append(line.length() == 0 ? "" : " ").append(rest);
        }
        lines.add(line.toString());
        return lines;
    }

    /** Characters of the longest beginning that fits, at least one whole letter. */
    private static int fitting(String text, double width) {
        int end = Character.charCount(text.codePointAt(0));
        while (end < text.length()) {
            int next = end + Character.charCount(text.codePointAt(end));
            // Measured anew each time, so that it agrees to the last digit with whoever measures the whole.
            if (of(text.substring(0, next)) > width) {
                break;
            }
            end = next;
        }
        return end;
    }

    /** The text, or a beginning of it with an ellipsis where it is too wide. */
    static String cut(String text, double width) {
        if (of(text) <= width || text.isEmpty()) {
            return text;
        }
        return text.substring(0, fitting(text, Math.max(0, width - of('…')))) + "…";
    }
}
