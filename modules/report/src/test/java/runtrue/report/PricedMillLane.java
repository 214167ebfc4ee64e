package runtrue.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import runtrue.result.BillResult;
import runtrue.result.CheckResult;

/** The invented drop with rates for some of its lines, in two currencies. */
final class PricedMillLane {
    private static final List<Optional<BillResult.Rate>> RATES = List.of(
            Optional.of(new BillResult.Rate(9.85, "EUR", "m", "length")),
            Optional.of(new BillResult.Rate(180.005, "EUR", "box", "count")),
            Optional.of(new BillResult.Rate(1.2, "GBP", "kg", "mass")),
            Optional.empty());

    private PricedMillLane() {}

    static CheckResult result() {
        CheckResult r = MillLane.result();
        List<BillResult.Line> lines = new ArrayList<>();
        for (int i = 0; i < r.bill().lines().size(); i++) {
            lines.add(priced(r.bill().lines().get(i), RATES.get(i)));
        }
        BillResult bill = new BillResult(
                r.bill().buildUp(),
                lines,
                r.bill().figures(),
                r.bill().missing(),
                Optional.of(new BillResult.Rates(
                        "rates.csv",
                        List.of("line 5: =HYPERLINK(\"http://example.invalid\"), pcs: no such item in this bill"),
                        List.of("gutter/"))),
                r.bill().modelled(),
                r.bill().offcuts());
        return new CheckResult(
                r.format(),
                r.toolVersion(),
                r.runStamp(),
                r.drop(),
                r.files(),
                r.ruleSet(),
                r.roofSystem(),
                r.settings(),
                r.tolerances(),
                r.counts(),
                r.planes(),
                r.edges(),
                r.bodies(),
                r.gridLines(),
                r.findings(),
                r.conforming(),
                r.concessions(),
                bill,
                r.unread(),
                r.unplaced(),
                r.methods(),
                r.stated(),
                r.health(),
                r.cautions(),
                r.changes());
    }

    private static BillResult.Line priced(BillResult.Line l, Optional<BillResult.Rate> rate) {
        return new BillResult.Line(
                l.id(),
                l.item(),
                l.section(),
                l.description(),
                l.variant(),
                l.unit(),
                l.net(),
                l.gross(),
                l.ordered(),
                l.differences(),
                l.count(),
                l.each(),
                l.lengthMetres(),
                l.massKilograms(),
                l.pieces(),
                l.cutting(),
                l.method(),
                l.about(),
                l.source(),
                l.parts(),
                rate);
    }
}
