package runtrue.bill;

import java.util.List;

/**
 * One quantity, traceable to what it was taken from.
 *
 * @param item for example {@code sheet}, {@code clip}, {@code ridge}
 * @param description for people
 * @param plane id of the plane; empty in totals over planes
 * @param quantity number in {@code unit}
 * @param unit {@code m}, {@code m2}, {@code kg}, {@code pcs}
 * @param length of each piece in metres where pieces are ordered by length, else 0
 * @param method how it was worked out, one sentence
 * @param from ids of planes, edges or support lines
 */
public record BillLine(
        String item,
        String description,
        String plane,
        double quantity,
        String unit,
        double length,
        String method,
        List<String> from) {
    public BillLine {
        from = List.copyOf(from);
    }
}
