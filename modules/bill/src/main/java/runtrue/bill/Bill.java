package runtrue.bill;

import java.util.List;

/**
 * Quantities of a drop.
 *
 * @param lines what to order, in the order of the build-up
 * @param figures areas, coil, lifting and transport
 * @param missing what could not be worked out and why, one sentence each
 */
public record Bill(List<BillLine> lines, List<BillFigure> figures, List<String> missing) {
    public Bill {
        lines = List.copyOf(lines);
        figures = List.copyOf(figures);
        missing = List.copyOf(missing);
    }
}
