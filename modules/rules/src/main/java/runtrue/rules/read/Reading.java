package runtrue.rules.read;

import java.util.Optional;
import runtrue.rules.Quantity;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.units.Dimension;
import runtrue.rules.units.Quantities;
import runtrue.rules.units.Unit;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlValue.Scalar;

/** Reads scalars of any file; what is wrong with them goes to the problems with its place. */
public final class Reading {
    private Reading() {}

    public static Optional<Quantity> quantity(Scalar scalar, Dimension wanted, Problems problems) {
        try {
            return Optional.of(Quantities.parse(scalar.text(), wanted));
        } catch (IllegalArgumentException e) {
            problems.add(scalar.place(), String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    /** The value of a fact that settings or a system state, within the fact's bounds; plain numbers need no unit. */
    public static Optional<Quantity> value(Scalar scalar, FactSpec fact, Problems problems) {
        Optional<Quantity> quantity = fact.dimension().equals(Dimension.NONE) && Quantities.isBareNumber(scalar.text())
                ? number(scalar, problems).map(n -> new Quantity(n, Unit.ONE.symbol()))
                : quantity(scalar, fact.dimension(), problems);
        quantity.flatMap(q -> Bounds.fault(fact, q)).ifPresent(fault -> problems.add(scalar.place(), fault));
        return quantity;
    }

    public static Optional<Unit> unit(Scalar scalar, Problems problems) {
        try {
            return Optional.of(Unit.of(scalar.text()));
        } catch (IllegalArgumentException e) {
            problems.add(scalar.place(), String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }

    public static Optional<Double> number(Scalar scalar, Problems problems) {
        if (Quantities.isBareNumber(scalar.text())) {
            double number = Double.parseDouble(scalar.text().strip());
            if (Double.isFinite(number)) {
                return Optional.of(number);
            }
            problems.add(scalar.place(), "\"" + scalar.text() + "\" is too large");
            return Optional.empty();
        }
        problems.add(scalar.place(), "\"" + scalar.text() + "\" is no number");
        return Optional.empty();
    }
}
