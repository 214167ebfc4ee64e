package runtrue.bill;

import java.util.ArrayList;
import java.util.List;
import runtrue.roof.PlaneLayout;
import runtrue.roof.Roof;
import runtrue.rules.DropSettings;
import runtrue.rules.RoofSystem;

/** Works out the quantities of a roof. */
public final class Bills {
    private Bills() {}

    /**
     * Lines per plane (sheets, areas, clips, fixings, mass, then edges), and their totals: every total is the sum of
     * its lines. An edge that two planes share stands with the first of them only.
     *
     * @param roof as laid out with the system's cover width
     */
    public static Bill of(Roof roof, RoofSystem system, DropSettings settings) {
        List<BillLine> lines = new ArrayList<>();
        List<String> missing = new ArrayList<>();
        for (PlaneLayout layout : roof.planes()) {
            PlaneBill bill = new PlaneBill(layout, roof, system, settings, missing);
            lines.addAll(bill.lines());
        }
        lines.addAll(EdgeBill.lines(roof));
        for (Roof.Unplaced unplaced : roof.unplaced()) {
            if (!unplaced.counted()) {
                missing.add("everything of " + unplaced.element().element().ifcClass() + " \""
                        + unplaced.element().element().name() + "\" ("
                        + unplaced.element().element().globalId() + "): " + unplaced.reason());
            }
        }
        return new Bill(lines, Totals.of(lines), missing);
    }
}
