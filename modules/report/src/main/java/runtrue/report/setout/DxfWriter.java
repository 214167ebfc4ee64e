package runtrue.report.setout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleBinaryOperator;
import runtrue.result.Point;

/**
 * Text of the Drawing Exchange Format, release 12, whose reference was published and which every program that knows DXF
 * reads: pairs of a group code and a value, a line each. Only lines, texts and polylines in space are needed. Release 12
 * knows no unit of length; the header states metres as later releases do, which readers of release 12 pass over.
 */
final class DxfWriter {
    private static final int COMMENT = 999;

    /** Polyline flags: closed, and in space. */
    private static final int CLOSED = 1;

    private static final int IN_SPACE = 8;

    private final StringBuilder text = new StringBuilder();

    /** Comment lines, the extent of what will be drawn, and the layers, all before the first figure. */
    DxfWriter(List<String> comments, List<Point> extent, Collection<Layer> layers) {
        comments.forEach(c -> pair(COMMENT, plain(c)));
        section("HEADER");
        pair(9, "$ACADVER");
        pair(1, "AC1009");
        pair(9, "$INSUNITS");
        pair(70, "6");
        if (!extent.isEmpty()) {
            pair(9, "$EXTMIN");
            corner(extent, Math::min);
            pair(9, "$EXTMAX");
            corner(extent, Math::max);
        }
        end();
        section("TABLES");
        table("LTYPE", 1);
        pair(0, "LTYPE");
        pair(2, "CONTINUOUS");
        pair(70, "0");
        pair(3, "Solid line");
        pair(72, "65");
        pair(73, "0");
        pair(40, "0.0");
        pair(0, "ENDTAB");
        table("LAYER", layers.size());
        for (Layer layer : layers) {
            pair(0, "LAYER");
            pair(2, layer.name());
            pair(70, "0");
            pair(62, String.valueOf(layer.colour()));
            pair(6, "CONTINUOUS");
        }
        pair(0, "ENDTAB");
        end();
        section("ENTITIES");
    }

    void line(Layer layer, Point from, Point to) {
        entity("LINE", layer);
        place(10, from);
        place(11, to);
    }

    /** A closed line through three points or more. */
    void ring(Layer layer, List<Point> points) {
        if (points.size() < 3) {
            return;
        }
        entity("POLYLINE", layer);
        pair(66, "1");
        place(10, new Point(0, 0, 0));
        pair(70, String.valueOf(CLOSED + IN_SPACE));
        for (Point point : points) {
            entity("VERTEX", layer);
            place(10, point);
            pair(70, "32");
        }
        entity("SEQEND", layer);
    }

    /**
     * A text whose middle lies at a point.
     *
     * @param height of capitals, metres
     * @param turn of its line in plan, radians counter-clockwise from X; made readable from below or the right
     */
    void text(Layer layer, Point at, double height, double turn, String words) {
        if (words.isBlank()) {
            return;
        }
        double degrees = Math.toDegrees(turn) % 360;
        double half = ((degrees % 180) + 180) % 180;
        entity("TEXT", layer);
        place(10, at);
        pair(40, number(height));
        pair(1, plain(words));
        pair(50, number(half > 90.5 ? half - 180 : half));
        pair(72, "1");
        place(11, at);
        pair(73, "2");
    }

    /** The whole file. */
    String finished() {
        end();
        pair(0, "EOF");
        return text.toString();
    }

    private void entity(String kind, Layer layer) {
        pair(0, kind);
        pair(8, layer.name());
    }

    private void place(int code, Point point) {
        pair(code, number(point.xMetres()));
        pair(code + 10, number(point.yMetres()));
        pair(code + 20, number(point.zMetres()));
    }

    private void corner(List<Point> extent, DoubleBinaryOperator choice) {
        place(
                10,
                new Point(
                        extent.stream()
                                .mapToDouble(Point::xMetres)
                                .reduce(choice)
                                .orElse(0),
                        extent.stream()
                                .mapToDouble(Point::yMetres)
                                .reduce(choice)
                                .orElse(0),
                        extent.stream()
                                .mapToDouble(Point::zMetres)
                                .reduce(choice)
                                .orElse(0)));
    }

    private void table(String name, int rows) {
        pair(0, "TABLE");
        pair(2, name);
        pair(70, String.valueOf(rows));
    }

    private void section(String name) {
        pair(0, "SECTION");
        pair(2, name);
    }

    private void end() {
        pair(0, "ENDSEC");
    }

    private void pair(int code, String value) {
        text.append(code).append("\r\n").append(value).append("\r\n");
    }

    /** Tenths of a millimetre; by whole numbers, since a drawing of a large drop has hundreds of thousands. */
    private static String number(double value) {
        long tenths = Math.round(Math.abs(value) * 10_000);
        String digits = String.valueOf(10_000 + tenths % 10_000).substring(1);
        return (value < 0 && tenths > 0 ? "-" : "") + tenths / 10_000 + "." + digits;
    }

    /** One line of ASCII: what is not gets its code point, as readers understand it; line ends would end the value. */
    private static String plain(String words) {
        List<String> parts = new ArrayList<>();
        words.codePoints()
                .limit(200)
                .forEach(c -> parts.add(
                        c < ' ' || c == 0x7F
                                ? " "
                                : c < 0x7F ? Character.toString(c) : String.format(Locale.ROOT, "\\U+%04X", c)));
        return String.join("", parts).strip();
    }
}
