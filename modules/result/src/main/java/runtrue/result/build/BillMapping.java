package runtrue.result.build;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import runtrue.bill.BillFigure;
import runtrue.bill.BillLine;
import runtrue.bill.modelled.ModelledCount;
import runtrue.bill.offcut.MayServe;
import runtrue.result.BillResult;
import runtrue.rules.units.Unit;

/** The bill with its rates. */
final class BillMapping {
    private final BillInput input;
    private final Set<RateList.Entry> used = new HashSet<>();
    private final List<String> unpriced = new ArrayList<>();

    private BillMapping(BillInput input) {
        this.input = input;
    }

    static BillResult of(BillInput input) {
        return new BillMapping(input).map();
    }

    private BillResult map() {
        List<BillResult.Line> lines =
                input.bill().lines().stream().map(this::line).toList();
        return new BillResult(
                new BillResult.BuildUp(
                        input.buildUp().name(),
                        input.buildUp().title(),
                        input.buildUp().source(),
                        input.buildUp().file()),
                lines,
                input.bill().figures().stream().map(BillMapping::figure).toList(),
                input.bill().missing(),
                input.rates().map(this::rates),
                input.modelled().stream().map(BillMapping::modelled).toList(),
                input.bill().offcuts().stream().map(BillMapping::mayServe).toList());
    }

    private static BillResult.MayServe mayServe(MayServe pair) {
        return new BillResult.MayServe(
                pair.plane(),
                pair.sheet(),
                pair.otherPlane(),
                pair.otherSheet(),
                Math.round(pair.length() * 1000) / 1000.0,
                Math.round(pair.saved() * 1000) / 1000.0,
                pair.way().label());
    }

    private static BillResult.Modelled modelled(ModelledCount count) {
        return new BillResult.Modelled(
                count.plane(),
                count.kind(),
                count.ifcClass(),
                count.count(),
                count.occurrences(),
                count.how(),
                count.items(),
                count.derived(),
                count.remark(),
                count.globalIds());
    }

    private BillResult.Line line(BillLine line) {
        return new BillResult.Line(
                line.id(),
                line.item(),
                line.section(),
                line.description(),
                line.variant(),
                line.unit(),
                line.net(),
                line.gross(),
                line.ordered(),
                line.differences().stream()
                        .map(d -> new BillResult.Difference(d.reason(), d.quantity()))
                        .toList(),
                line.count(),
                line.each(),
                line.length(),
                line.mass(),
                line.pieces().stream()
                        .map(p -> new BillResult.Pieces(p.length(), p.count()))
                        .toList(),
                line.cutting().map(StockPlanMapping::of),
                line.method(),
                line.about(),
                line.source(),
                line.parts().stream()
                        .map(p ->
                                new BillResult.Part(p.plane(), p.zone(), p.sharedWith(), p.net(), p.count(), p.from()))
                        .toList(),
                rate(line));
    }

    private static BillResult.Figure figure(BillFigure figure) {
        return new BillResult.Figure(figure.what(), figure.value(), figure.unit(), figure.verdict(), figure.remark());
    }

    /** The first rate for the line by its id, else by its item or description, whose unit the line can be counted in. */
    private Optional<BillResult.Rate> rate(BillLine line) {
        if (input.rates().isEmpty()) {
            return Optional.empty();
        }
        List<RateList.Entry> fitting = new ArrayList<>();
        for (String name : List.of(line.id(), line.item(), line.description())) {
            input.rates().get().entries().stream()
                    .filter(e -> e.item().equalsIgnoreCase(name))
                    .forEach(fitting::add);
        }
        for (RateList.Entry entry : fitting) {
            Optional<String> of = of(line, entry.unit());
            if (of.isPresent()) {
                used.add(entry);
                return Optional.of(new BillResult.Rate(entry.rate(), entry.currency(), entry.unit(), of.get()));
            }
        }
        unpriced.add(line.id());
        return Optional.empty();
    }

    /** Which figure of the line is in that unit; empty when none is. */
    private static Optional<String> of(BillLine line, String unit) {
        String symbol = Unit.find(unit).map(Unit::symbol).orElse(unit);
        if (symbol.equals(line.unit())) {
            return Optional.of("ordered");
        } else if (line.count() > 0 && (line.each().equals(unit) || line.each().startsWith(unit + " of "))) {
            return Optional.of("count");
        } else if (symbol.equals("m") && line.length() > 0) {
            return Optional.of("length");
        }
        return symbol.equals("kg") && line.mass().isPresent() ? Optional.of("mass") : Optional.empty();
    }

    private BillResult.Rates rates(RateList rates) {
        Set<String> names = new HashSet<>();
        input.bill()
                .lines()
                .forEach(l -> names.addAll(List.of(
                        l.id().toLowerCase(Locale.ROOT),
                        l.item().toLowerCase(Locale.ROOT),
                        l.description().toLowerCase(Locale.ROOT))));
        List<String> unknown = rates.entries().stream()
                .filter(e -> !used.contains(e))
                .map(e -> "line " + e.line() + ": " + e.item() + ", " + e.unit() + ": "
                        + (names.contains(e.item().toLowerCase(Locale.ROOT))
                                ? "the item is not counted in this unit, or has a rate already"
                                : "no such item in this bill"))
                .toList();
        return new BillResult.Rates(rates.file(), unknown, unpriced);
    }
}
