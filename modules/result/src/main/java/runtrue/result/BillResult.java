package runtrue.result;

import java.util.List;

/**
 * Quantities of the drop.
 *
 * @param totals over all planes
 * @param missing what could not be worked out and why, one sentence each
 */
public record BillResult(List<Line> lines, List<Line> totals, List<String> missing) {
    public BillResult {
        lines = List.copyOf(lines);
        totals = List.copyOf(totals);
        missing = List.copyOf(missing);
    }

    /**
     * One quantity.
     *
     * @param item for example {@code sheet}, {@code clip}, {@code ridge}
     * @param plane id; empty in totals
     * @param quantity in its unit: {@code m}, {@code m2}, {@code kg} or {@code pcs}
     * @param lengthMetres of each piece where pieces are ordered by length, else 0
     * @param method how it was worked out
     * @param from ids of planes, edges or support lines that it was taken from
     */
    public record Line(
            String item,
            String description,
            String plane,
            Measure quantity,
            double lengthMetres,
            String method,
            List<String> from) {
        public Line {
            from = List.copyOf(from);
        }
    }
}
