package runtrue.result.build;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import runtrue.result.Measure;
import runtrue.rules.Quantity;

/** From SI to the unit that people read a quantity in. */
final class Measures {
    private static final double DEGREE = Math.PI / 180;

    /** SI units in one of the unit. Kelvin is a difference of temperature here, so it has no offset. */
    private static final Map<String, Double> SI = Map.ofEntries(
            Map.entry("1", 1.0),
            Map.entry("%", 0.01),
            Map.entry("pcs", 1.0),
            Map.entry("mm", 1e-3),
            Map.entry("cm", 1e-2),
            Map.entry("m", 1.0),
            Map.entry("um", 1e-6),
            Map.entry("mm2", 1e-6),
            Map.entry("m2", 1.0),
            Map.entry("1/m", 1.0),
            Map.entry("1/m2", 1.0),
            Map.entry("deg", DEGREE),
            Map.entry("rad", 1.0),
            Map.entry("Pa", 1.0),
            Map.entry("kPa", 1e3),
            Map.entry("MPa", 1e6),
            Map.entry("N", 1.0),
            Map.entry("kN", 1e3),
            Map.entry("N/m", 1.0),
            Map.entry("kN/m", 1e3),
            Map.entry("N/m2", 1.0),
            Map.entry("kN/m2", 1e3),
            Map.entry("kg", 1.0),
            Map.entry("kg/m", 1.0),
            Map.entry("kg/m2", 1.0),
            Map.entry("kg/m3", 1.0),
            Map.entry("K", 1.0),
            Map.entry("1/K", 1.0),
            Map.entry("m/s", 1.0));

    private Measures() {}

    /** @throws IllegalArgumentException for a unit that is not known, with those that are */
    static Measure of(Quantity quantity) {
        Double factor = SI.get(quantity.unit());
        if (factor == null) {
            throw new IllegalArgumentException("Unit '" + quantity.unit() + "' is not known to the result; known are "
                    + String.join(", ", new TreeMap<>(SI).keySet()));
        }
        return new Measure(Rounded.measure(quantity.si() / factor), quantity.unit());
    }

    static Optional<Measure> of(Optional<Quantity> quantity) {
        return quantity.map(Measures::of);
    }
}
