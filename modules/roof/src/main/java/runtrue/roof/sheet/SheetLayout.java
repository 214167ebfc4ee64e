package runtrue.roof.sheet;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Interval;
import runtrue.roof.SetOut;
import runtrue.roof.Sheet;
import runtrue.roof.Stretch.Ends;
import runtrue.roof.sheet.Cells.Cell;

/**
 * Sheets of a plane: strips of one cover width along the fall, set out from a verge, the last one trimmed to the width
 * left. Where a penetration cuts a strip through in its full width, or the strip leaves the plane and comes back, there
 * is a sheet on either side.
 */
public final class SheetLayout {
    /** Widths and slants below this are none: a millimetre is what a roofer can set out. */
    private static final double MILLIMETRE = 1e-3;

    private SheetLayout() {}

    /**
     * Sheets by strip from the set-out verge, then from the eave up.
     *
     * @param outline in u, v, metres
     * @param coverWidth metres, more than 0
     */
    public static List<Sheet> of(Polygon outline, double coverWidth, SetOut setOut) {
        List<Cell> cells = Cells.of(outline);
        List<Cell> shell = Cells.ofShell(outline);
        List<Sheet> sheets = new ArrayList<>();
        int number = 0;
        for (Interval strip : strips(outline.getEnvelopeInternal(), coverWidth, setOut)) {
            number++;
            List<Cell> left = clip(cells, strip);
            boolean cut = area(left) < area(clip(shell, strip)) - MILLIMETRE * MILLIMETRE;
            for (List<Cell> piece : connected(left)) {
                sheets.add(sheet(number, piece, coverWidth, cut));
            }
        }
        return sheets;
    }

    /** Extents of the strips in the order in which they are laid. */
    public static List<Interval> strips(Envelope extent, double coverWidth, SetOut setOut) {
        double width = extent.getWidth();
        int full = (int) Math.floor((width + MILLIMETRE) / coverWidth);
        double left = width - full * coverWidth;
        List<Interval> strips = new ArrayList<>();
        double start = extent.getMinX();
        if (setOut == SetOut.CENTRED && left > MILLIMETRE) {
            // Both outer strips alike: half a strip more than the rest on either side keeps slivers away.
            double outer = (left + (full > 0 ? coverWidth : 0)) / 2;
            int inner = Math.max(full - 1, 0);
            strips.add(new Interval(start, start + outer));
            for (int i = 0; i < inner; i++) {
                strips.add(new Interval(start + outer + i * coverWidth, start + outer + (i + 1) * coverWidth));
            }
            strips.add(new Interval(extent.getMaxX() - outer, extent.getMaxX()));
            return strips;
        }
        for (int i = 0; i * coverWidth < width - MILLIMETRE; i++) {
            double from = i * coverWidth;
            double to = Math.min(width, from + coverWidth);
            strips.add(
                    setOut == SetOut.RIGHT
                            ? new Interval(extent.getMaxX() - to, extent.getMaxX() - from)
                            : new Interval(start + from, start + to));
        }
        return strips;
    }

    private static List<Cell> clip(List<Cell> cells, Interval strip) {
        List<Cell> clipped = new ArrayList<>();
        for (Cell cell : cells) {
            double from = Math.max(cell.u().from(), strip.from());
            double to = Math.min(cell.u().to(), strip.to());
            if (to - from > MILLIMETRE / 100) {
                clipped.add(cell.between(from, to));
            }
        }
        return clipped;
    }

    /** Groups of cells that touch along a line of the fall; each is one piece of metal. */
    private static List<List<Cell>> connected(List<Cell> cells) {
        List<List<Cell>> groups = new ArrayList<>();
        for (Cell cell : cells) {
            List<List<Cell>> touching = groups.stream()
                    .filter(g -> g.stream().anyMatch(c -> touch(c, cell)))
                    .toList();
            List<Cell> merged = new ArrayList<>();
            touching.forEach(merged::addAll);
            merged.add(cell);
            groups.removeIf(touching::contains);
            groups.add(merged);
        }
        groups.sort((a, b) -> Double.compare(low(a), low(b)));
        return groups;
    }

    private static boolean touch(Cell a, Cell b) {
        if (Math.abs(a.u().to() - b.u().from()) > MILLIMETRE / 100) {
            return false;
        }
        double low = Math.max(a.low().atTo(), b.low().atFrom());
        double high = Math.min(a.high().atTo(), b.high().atFrom());
        return high - low > MILLIMETRE;
    }

    private static Sheet sheet(int number, List<Cell> cells, double coverWidth, boolean cut) {
        double from = cells.stream().mapToDouble(c -> c.u().from()).min().orElseThrow();
        double to = cells.stream().mapToDouble(c -> c.u().to()).max().orElseThrow();
        double low = low(cells);
        double high = cells.stream()
                .mapToDouble(c -> Math.max(c.high().atFrom(), c.high().atTo()))
                .max()
                .orElseThrow();
        boolean tapered = cells.stream().anyMatch(c -> slanted(c.low()) || slanted(c.high()));
        return new Sheet(
                number,
                new Interval(from, to),
                new Interval(low, high),
                longest(cells),
                area(cells),
                to - from < coverWidth - MILLIMETRE,
                tapered,
                cut);
    }

    /** Longest line along the fall from end to end of a piece: a hole that leaves metal beside it shortens no sheet. */
    private static double longest(List<Cell> cells) {
        double longest = 0;
        for (Cell cell : cells) {
            double atFrom = cell.high().atFrom() - cell.low().atFrom();
            double atTo = cell.high().atTo() - cell.low().atTo();
            for (Cell other : cells) {
                if (other.u().from() == cell.u().from()) {
                    atFrom = Math.max(atFrom, other.high().atFrom() - cell.low().atFrom());
                    atTo = Math.max(atTo, other.high().atTo() - cell.low().atTo());
                }
            }
            longest = Math.max(longest, Math.max(atFrom, atTo));
        }
        return longest;
    }

    private static boolean slanted(Ends ends) {
        return Math.abs(ends.atTo() - ends.atFrom()) > MILLIMETRE;
    }

    private static double low(List<Cell> cells) {
        return cells.stream()
                .mapToDouble(c -> Math.min(c.low().atFrom(), c.low().atTo()))
                .min()
                .orElse(0);
    }

    private static double area(List<Cell> cells) {
        return cells.stream().mapToDouble(Cell::area).sum();
    }
}
