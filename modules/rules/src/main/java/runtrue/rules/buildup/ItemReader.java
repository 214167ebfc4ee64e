package runtrue.rules.buildup;

import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import runtrue.roof.EdgeKind;
import runtrue.rules.Quantity;
import runtrue.rules.buildup.BuildUpItem.Amount;
import runtrue.rules.buildup.BuildUpItem.Packing;
import runtrue.rules.buildup.BuildUpItem.Waste;
import runtrue.rules.cel.Expression;
import runtrue.rules.cel.ExpressionCompiler;
import runtrue.rules.cel.FactType;
import runtrue.rules.read.Reading;
import runtrue.rules.units.Dimension;
import runtrue.rules.units.Quantities;
import runtrue.rules.units.Unit;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;

/** Reads one item of a build-up. */
final class ItemReader {
    private final CountedOn on;
    private final ExpressionCompiler compiler;

    /** By text: many items are counted alike, and the library takes its time over each expression. */
    private final Map<String, Expression> compiled;

    private final Problems problems;

    /** @param compiled numbers compiled for this kind of subject so far; grows */
    ItemReader(CountedOn on, ExpressionCompiler compiler, Map<String, Expression> compiled, Problems problems) {
        this.on = on;
        this.compiler = compiler;
        this.compiled = compiled;
        this.problems = problems;
    }

    /** The item; empty when the errors leave too little to read. */
    Optional<BuildUpItem> read(Mapping item) {
        Optional<Unit> unit = item.scalar("unit").flatMap(s -> Reading.unit(s, problems));
        Optional<ItemKind> kind = item.text("kind").flatMap(ItemKind::find);
        Optional<Expression> when = item.scalar("when").flatMap(s -> compiler.compile(s, FactType.TRUTH));
        if (unit.isEmpty() || kind.isEmpty()) {
            return Optional.empty();
        }
        Dimension dimension = unit.get().dimension();
        Optional<Amount> quantity = item.scalar("quantity")
                .flatMap(s -> amount(s, kind.get() == ItemKind.SHEET ? Dimension.LENGTH : dimension));
        Optional<Amount> mass = item.scalar("mass").flatMap(s -> amount(s, Dimension.MASS.per(dimension)));
        Optional<Packing> packing = packing(item, dimension);
        if (quantity.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new BuildUpItem(
                item.text("id").orElse(""),
                item.text("name").orElse(""),
                item.text("section").orElse(""),
                kind.get(),
                on,
                edges(item),
                when,
                quantity.get(),
                unit.get(),
                item.text("zones").flatMap(Zoning::find).orElse(Zoning.NONE),
                length(item, "lap").orElse(0.0),
                length(item, "side lap").orElse(0.0),
                item.mapping("waste").flatMap(this::waste),
                packing,
                item.scalar("round to")
                        .flatMap(s -> positive(s, kind.get() == ItemKind.SHEET ? Dimension.LENGTH : dimension)),
                length(item, "cover width"),
                length(item, "longest"),
                mass,
                item.text("about").orElse(""),
                item.text("source").orElse("")));
    }

    private Set<EdgeKind> edges(Mapping item) {
        Set<EdgeKind> kinds = EnumSet.noneOf(EdgeKind.class);
        for (YamlValue value : item.items("edges")) {
            if (value instanceof Scalar scalar) {
                for (EdgeKind kind : EdgeKind.values()) {
                    if (kind.label().equals(scalar.text())) {
                        kinds.add(kind);
                    }
                }
            }
        }
        return kinds;
    }

    /** A quantity with its unit, or an expression of the wanted dimension. */
    private Optional<Amount> amount(Scalar scalar, Dimension wanted) {
        if (Quantities.isLiteral(scalar.text())) {
            return Reading.quantity(scalar, wanted, problems).map(q -> new Amount(Optional.of(q), Optional.empty()));
        }
        Optional<Expression> expression =
                Optional.ofNullable(compiled.get(scalar.text())).or(() -> compiler.compile(scalar, FactType.NUMBER));
        expression.ifPresent(e -> compiled.put(scalar.text(), e));
        expression
                .flatMap(Expression::dimension)
                .filter(got -> !got.equals(wanted))
                .ifPresent(got ->
                        problems.add(scalar.place(), "gives a " + got.label() + "; wanted is a " + wanted.label()));
        return expression.map(e -> new Amount(Optional.empty(), Optional.of(e)));
    }

    private Optional<Waste> waste(Mapping waste) {
        Optional<Quantity> share = waste.scalar("share").flatMap(s -> Reading.quantity(s, Dimension.NONE, problems));
        share.filter(q -> q.si() < 0 || q.si() > 1)
                .ifPresent(q -> problems.add(waste.place(), "a share is 0 % to 100 %"));
        return share.map(q -> new Waste(q.si(), waste.text("reason").orElse("")));
    }

    private Optional<Packing> packing(Mapping item, Dimension dimension) {
        Optional<Double> stock = length(item, "stock");
        if (stock.isPresent()) {
            double lap = length(item, "lap").orElse(0.0);
            double shortest = length(item, "shortest").orElse(0.0);
            if (tooShort(item, stock.get(), lap)) {
                return Optional.empty();
            } else if (2 * shortest > stock.get() + lap) {
                problems.add(item.place(), "the shortest piece is more than half of a stock length");
            }
            return Optional.of(Packing.stock(stock.get(), length(item, "kerf").orElse(0.0), shortest));
        }
        Optional<Mapping> roll = item.mapping("roll");
        if (roll.isPresent()) {
            return roll(item, roll.get());
        }
        return item.mapping("pack")
                .flatMap(pack -> pack.scalar("holds")
                        .flatMap(s -> positive(s, dimension))
                        .map(holds -> Packing.pack(holds, pack.text("word").orElse("pack"))));
    }

    private Optional<Packing> roll(Mapping item, Mapping roll) {
        Optional<Double> width = length(roll, "width");
        Optional<Double> length = length(roll, "length");
        if (width.isEmpty()
                || length.isEmpty()
                || tooShort(item, width.get(), length(item, "side lap").orElse(0.0))
                || tooShort(item, length.get(), length(item, "lap").orElse(0.0))) {
            return Optional.empty();
        }
        return Optional.of(
                Packing.roll(width.get(), length.get(), roll.text("laid").flatMap(RollRun::find)));
    }

    private boolean tooShort(Mapping item, double size, double lap) {
        if (lap >= size) {
            problems.add(item.place(), "the lap is as wide as what is lapped");
        }
        return lap >= size;
    }

    private Optional<Double> length(Mapping mapping, String key) {
        return mapping.scalar(key).flatMap(s -> positive(s, Dimension.LENGTH));
    }

    private Optional<Double> positive(Scalar scalar, Dimension dimension) {
        Optional<Quantity> quantity = Reading.quantity(scalar, dimension, problems);
        quantity.filter(q -> !(q.si() > 0))
                .ifPresent(q -> problems.add(scalar.place(), "\"" + scalar.text() + "\" must be more than 0"));
        return quantity.map(Quantity::si);
    }
}
