package runtrue.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import runtrue.result.BillResult;

/** Builds one line of an invented bill. */
final class BillLines {
    private final String item;
    private final String description;
    private final String variant;
    private final String unit;
    private final List<Double> amounts;
    private final List<BillResult.Difference> differences = new ArrayList<>();
    private final List<BillResult.Pieces> pieces = new ArrayList<>();
    private final List<BillResult.Part> parts = new ArrayList<>();
    private Optional<BillResult.StockPlan> cutting = Optional.empty();
    private Optional<BillResult.Rate> rate = Optional.empty();
    private long count;
    private String each = "";
    private double length;

    /** @param amounts net, gross, ordered */
    BillLines(String item, String description, String variant, String unit, List<Double> amounts) {
        this.item = item;
        this.description = description;
        this.variant = variant;
        this.unit = unit;
        this.amounts = amounts;
    }

    BillLines counted(long pieceCount, String what, double metres) {
        count = pieceCount;
        each = what;
        length = metres;
        return this;
    }

    BillLines because(String reason, double quantity) {
        differences.add(new BillResult.Difference(reason, quantity));
        return this;
    }

    BillLines pieces(double metres, long pieceCount) {
        pieces.add(new BillResult.Pieces(metres, pieceCount));
        return this;
    }

    BillLines from(String plane, double net, long pieceCount, String... ids) {
        parts.add(new BillResult.Part(plane, "", List.of(), net, pieceCount, List.of(ids)));
        return this;
    }

    BillLines at(BillResult.Rate price) {
        rate = Optional.of(price);
        return this;
    }

    BillLines cut(BillResult.StockPlan plan) {
        cutting = Optional.of(plan);
        return this;
    }

    BillResult.Line line() {
        return new BillResult.Line(
                item + "/" + variant,
                item,
                "Section",
                description,
                variant,
                unit,
                amounts.get(0),
                amounts.get(1),
                amounts.get(2),
                differences,
                count,
                each,
                length,
                OptionalDouble.of(amounts.get(2) * 2),
                pieces,
                cutting,
                "for each plane: plane.area",
                "About it.",
                "Invented for the demo",
                parts,
                rate);
    }
}
