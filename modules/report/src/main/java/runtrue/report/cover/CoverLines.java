package runtrue.report.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Line;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.TextHeight;

/** Gathers the lines of a cover: headings, pairs, small tables, sentences. */
final class CoverLines {
    private static final float TITLE_HEIGHT = 28;
    private static final float BANNER_HEIGHT = 30;
    private static final float SECTION_HEIGHT = 24;

    private final List<Integer> widths;
    private final List<Line> lines = new ArrayList<>();

    CoverLines(List<Integer> widths) {
        this.widths = List.copyOf(widths);
    }

    void title(String text) {
        lines.add(new Line(List.of(Cell.of(text, Look.TITLE)), TITLE_HEIGHT, true));
    }

    /** One sentence over the whole width. */
    void banner(String text, Look look) {
        lines.add(new Line(List.of(Cell.of(text, look)), BANNER_HEIGHT, true));
    }

    /** A heading with a rule across the page. */
    void section(String text) {
        Cell[] cells = new Cell[widths.size()];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = Cell.of(i == 0 ? text : "", Look.SECTION);
        }
        lines.add(new Line(List.of(cells), SECTION_HEIGHT, false));
    }

    void pair(String label, String value) {
        pair(label, Cell.of(value, Look.NOTE), value);
    }

    void pair(String label, Cell value, String text) {
        lines.add(new Line(List.of(Cell.of(label, Look.LABEL), value), TextHeight.points(text, widthFrom(1)), true));
    }

    void sentence(String text, Look look) {
        lines.add(new Line(List.of(Cell.of(text, look)), TextHeight.points(text, widthFrom(0)), true));
    }

    void heads(String... names) {
        row(Stream.of(names).map(n -> Cell.of(n, Look.LABEL)).toList(), false);
    }

    /** A row of a small table, as high as its longest text needs; its last cell may reach to the page's edge. */
    void row(List<Cell> cells, boolean lastReachesOn) {
        float height = 0;
        for (int i = 0; i < cells.size(); i++) {
            boolean reaches = lastReachesOn && i == cells.size() - 1;
            if (cells.get(i) instanceof Cell.Text text) {
                height = Math.max(height, TextHeight.points(text.text(), reaches ? widthFrom(i) : widths.get(i)));
            }
        }
        lines.add(new Line(cells, height, lastReachesOn));
    }

    Page page(String name) {
        List<Line> all = List.copyOf(lines);
        return new Page(name, widths, 0, 0, false, widths.size(), true, all.size(), all);
    }

    private int widthFrom(int column) {
        return widths.stream().skip(column).mapToInt(Integer::intValue).sum();
    }
}
