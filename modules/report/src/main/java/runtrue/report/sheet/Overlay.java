package runtrue.report.sheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * What lies over the cells of a page.
 *
 * @param links cells that lead elsewhere in the workbook
 * @param images in any order
 * @param bars a chart of counts
 * @param breaks rows from 0 that begin a printed page; where there are any, the page is scaled to its width
 */
public record Overlay(List<Linked> links, List<Image> images, Optional<Bars> bars, List<Integer> breaks) {
    public Overlay {
        links = List.copyOf(links);
        images = List.copyOf(images);
        breaks = List.copyOf(breaks);
    }

    static Overlay of(List<Linked> links) {
        return new Overlay(links, List.of(), Optional.empty(), List.of());
    }

    /**
     * Cells of one column, one above the other, that all lead to one place.
     *
     * @param first row from 0
     * @param last row from 0
     * @param column from 0
     */
    public record Linked(int first, int last, int column, Link to) {}

    /**
     * Where something lies: its upper left corner is that of a cell, rows and columns from 0, its size in points.
     */
    public record Spot(int column, int row, double width, double height) {}

    /**
     * A picture.
     *
     * @param png its bytes, made when they are written
     * @param words what it shows, for those who cannot see it
     */
    public record Image(Supplier<byte[]> png, Spot spot, String words) {}

    /**
     * A bar for each of some rows, its name and its length those of cells.
     *
     * @param sheet that the cells stand on: this page's own
     * @param firstRow from 0
     * @param names in the column {@code nameColumn}, in the order of rows
     * @param values in the column beside it
     * @param colours 0xRRGGBB, one each
     */
    public record Bars(
            String sheet,
            int firstRow,
            int nameColumn,
            List<String> names,
            List<Integer> values,
            List<Integer> colours,
            Spot spot,
            String words) {
        public Bars {
            names = List.copyOf(names);
            values = List.copyOf(values);
            colours = List.copyOf(colours);
        }
    }
}
