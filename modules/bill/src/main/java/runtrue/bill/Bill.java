package runtrue.bill;

import java.util.List;
import runtrue.bill.offcut.MayServe;

/**
 * Quantities of a drop.
 *
 * @param lines what to order, in the order of the build-up
 * @param figures areas, coil, lifting and transport
 * @param missing what could not be worked out and why, one sentence each
 * @param offcuts sheets that might come two from one; the lines order each by itself
 */
public record Bill(List<BillLine> lines, List<BillFigure> figures, List<String> missing, List<MayServe> offcuts) {
    public Bill {
        lines = List.copyOf(lines);
        figures = List.copyOf(figures);
        missing = List.copyOf(missing);
        offcuts = List.copyOf(offcuts);
    }
}
