package runtrue.report.scene;

import java.util.List;
import runtrue.report.scene.Canvas.Spot;

/** Whole numbers drawn with strokes, so that a picture looks the same where there are no fonts at all. */
final class Numerals {
    private static final int INK = 0x263238;
    private static final int HALO = 0xFFFFFF;

    /** Strokes of each digit as columns 0 to 2 and rows 0 to 4, from the top left. */
    private static final List<List<String>> DIGITS = List.of(
            List.of("0020240400"),
            List.of("011014"),
            List.of("002022020424"),
            List.of("00202404", "0222"),
            List.of("000222", "2024"),
            List.of("200002222404"),
            List.of("200004242202"),
            List.of("002014"),
            List.of("0020240400", "0222"),
            List.of("220200202404"));

    private static final double STEP = 6;
    private static final double ADVANCE = 3.4 * STEP;

    private Numerals() {}

    static void draw(int number, Spot middle, Canvas canvas) {
        String digits = Integer.toString(number);
        double left = middle.x() - (digits.length() * ADVANCE - 1.4 * STEP) / 2;
        double top = middle.y() - 2 * STEP;
        for (boolean halo : new boolean[] {true, false}) {
            for (int i = 0; i < digits.length(); i++) {
                for (String stroke : DIGITS.get(digits.charAt(i) - '0')) {
                    stroke(stroke, left + i * ADVANCE, top, halo, canvas);
                }
            }
        }
    }

    private static void stroke(String stroke, double left, double top, boolean halo, Canvas canvas) {
        for (int i = 2; i < stroke.length(); i += 2) {
            canvas.line(
                    spot(stroke, i - 2, left, top), spot(stroke, i, left, top), halo ? HALO : INK, halo ? 9 : 3, false);
        }
    }

    private static Spot spot(String stroke, int at, double left, double top) {
        return new Spot(left + (stroke.charAt(at) - '0') * STEP, top + (stroke.charAt(at + 1) - '0') * STEP);
    }
}
