package runtrue.bill;

import java.util.List;

/** Quantities of a drop: lines per plane, their totals, and what could not be worked out and why. */
public record Bill(List<BillLine> lines, List<BillLine> totals, List<String> missing) {
    public Bill {
        lines = List.copyOf(lines);
        totals = List.copyOf(totals);
        missing = List.copyOf(missing);
    }
}
