package runtrue.rules.read;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import runtrue.rules.Quantity;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.units.Quantities;

/** What the numbers of settings and roof systems must at least be: positive, unless this says otherwise. */
final class Bounds {
    private static final Set<String> MAY_BE_ZERO = Set.of(
            "system.minimum_pitch",
            "system.clip_travel",
            "system.screws_per_clip",
            "system.gutter_overhang",
            "system.ridge_set_back",
            "system.build_up_depth",
            "settings.build_up_depth",
            "settings.wind.parapet");

    /** Coefficients of pressure have either sign. */
    private static final Set<String> ANY_SIGN =
            Set.of("settings.wind.internal.highest", "settings.wind.internal.lowest", "settings.wind.external");

    /** Common practice, no source: nothing narrower is a roofing sheet, and a slip of the unit would make thousands. */
    private static final Map<String, Quantity> LEAST = Map.of("system.cover_width", new Quantity(0.05, "mm"));

    private static final Set<String> UPLIFT = Set.of("settings.uplift.", "settings.wind.given.zones.");

    private Bounds() {}

    /** What is wrong with the value, if anything. */
    static Optional<String> fault(FactSpec fact, Quantity value) {
        String name = fact.name().substring(fact.name().indexOf('.') + 1);
        String found = name + " is " + Quantities.text(value) + "; ";
        Quantity least = LEAST.get(fact.name());
        if (ANY_SIGN.contains(fact.name())) {
            return Optional.empty();
        } else if (MAY_BE_ZERO.contains(fact.name())) {
            return value.si() >= 0 ? Optional.empty() : Optional.of(found + "it must not be negative");
        } else if (!(value.si() > 0)) {
            boolean uplift = UPLIFT.stream().anyMatch(fact.name()::startsWith);
            return Optional.of(found + (uplift ? "uplift is given as a positive number" : "it must be more than 0"));
        } else if (least != null && value.si() < least.si()) {
            return Optional.of(found + "it must be at least " + Quantities.text(least));
        }
        return Optional.empty();
    }
}
