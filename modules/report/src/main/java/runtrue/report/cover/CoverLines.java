package runtrue.report.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import runtrue.report.sheet.Cell;
import runtrue.report.sheet.Line;
import runtrue.report.sheet.Link;
import runtrue.report.sheet.Look;
import runtrue.report.sheet.Overlay;
import runtrue.report.sheet.Page;
import runtrue.report.sheet.TextHeight;

/** Gathers the lines of a cover: headings, pairs, small tables, sentences. */
final class CoverLines {
    private static final float TITLE_HEIGHT = 28;
    private static final float BANNER_HEIGHT = 30;
    private static final float SECTION_HEIGHT = 24;
    private static final float ROW_BESIDE_CHART = 18;

    private final List<Integer> widths;
    private final List<Line> lines = new ArrayList<>();
    private final List<Overlay.Linked> links = new ArrayList<>();
    private Optional<Overlay.Bars> bars = Optional.empty();

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

    /** A row whose name leads elsewhere in the workbook, where the place is known. */
    void row(List<Cell> cells, Optional<Link> to) {
        row(linked(cells, to), true);
    }

    /** The same beside a chart of the given number of columns at the page's right edge. */
    void rowBesideChart(List<Cell> cells, Optional<Link> to, int columns) {
        List<Cell> shown = linked(cells, to);
        int last = shown.size() - 1;
        int width = widthFrom(last) - widthFrom(widths.size() - columns);
        float height = shown.get(last) instanceof Cell.Text text ? TextHeight.points(text.text(), width) : 0;
        lines.add(new Line(shown, Math.max(ROW_BESIDE_CHART, height), true, columns));
    }

    /** The chart that stands beside such rows. */
    void chart(Overlay.Bars chart) {
        bars = Optional.of(chart);
    }

    /** Number of the next row, from 0. */
    int next() {
        return lines.size();
    }

    /** Height of all rows from the given one on, in points. */
    float heightFrom(int first) {
        float height = 0;
        for (Line line : lines.subList(first, lines.size())) {
            height += line.height();
        }
        return height;
    }

    /** The name at the left leads there: a sentence would be set in one line by some spreadsheet programs. */
    private List<Cell> linked(List<Cell> cells, Optional<Link> to) {
        List<Cell> shown = new ArrayList<>(cells);
        if (to.isPresent()
                && cells.get(0) instanceof Cell.Text text
                && TextHeight.isOneLine(text.text(), widths.get(0))) {
            shown.set(0, text.linked());
            links.add(new Overlay.Linked(lines.size(), lines.size(), 0, to.get()));
        }
        return shown;
    }

    Page page(String name) {
        List<Line> all = List.copyOf(lines);
        return new Page(
                name,
                widths,
                0,
                0,
                false,
                widths.size(),
                true,
                all.size(),
                all,
                new Overlay(links, List.of(), bars, List.of()));
    }

    private int widthFrom(int column) {
        return widths.stream().skip(column).mapToInt(Integer::intValue).sum();
    }
}
