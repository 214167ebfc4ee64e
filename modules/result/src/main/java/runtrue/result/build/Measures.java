package runtrue.result.build;

import java.util.Optional;
import runtrue.result.Measure;
import runtrue.rules.Quantity;
import runtrue.rules.units.Quantities;

/** From SI to the unit that a quantity was written in. */
final class Measures {
    private Measures() {}

    /** @throws IllegalArgumentException for a unit that is not known, with those that are */
    static Measure of(Quantity quantity) {
        return new Measure(Rounded.measure(Quantities.number(quantity)), quantity.unit());
    }

    static Optional<Measure> of(Optional<Quantity> quantity) {
        return quantity.map(Measures::of);
    }
}
