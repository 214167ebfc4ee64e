package runtrue.roof.health;

import runtrue.roof.Bound;
import runtrue.roof.Bound.Unit;

/** From where on a model is suspicious: common practice, no source, unless a reason says otherwise. Printed with each result. */
@SuppressWarnings("ImmutableEnumChecker") // a record of immutable parts, but it carries no annotation
public enum HealthLimit {
    LARGEST_ROOF(
            "largest roof of a file", Unit.METRE, 2000, "Few buildings are longer; a wrong length unit is likelier."),
    SMALLEST_ROOF("smallest roof of a file", Unit.METRE, 0.5, "Less covers nothing; a wrong length unit is likelier."),
    THICKEST_ROOF("thickest roof element", Unit.METRE, 3, "More is no build-up."),
    THINNEST_ROOF("thinnest roof element", Unit.METRE, 2e-4, "Sheet metal and membranes are thicker."),
    THINNEST_MEMBER(
            "thinnest member", Unit.METRE, 0.01, "The larger side of a section; no purlin, batten or rail is as thin."),
    THICKEST_MEMBER("thickest member", Unit.METRE, 5, "Deeper members are trusses in one body, or a wrong unit."),
    LONGEST_MEMBER("longest member", Unit.METRE, 200, "No member comes in such a length."),
    FARTHEST(
            "farthest from the origin",
            Unit.METRE,
            10_000,
            "A single-precision number (IEEE 754, 24 bits) steps by about 1 mm from 8192 m on."),
    SAME_PLACE("same geometry", Unit.METRE, 1e-3, "Copies are exact but for the rounding of their placements."),
    OVERLAP("overlap of roof elements", Unit.FACTOR, 0.02, "Share of the smaller face; laps at joints are less.");

    private final Bound bound;

    HealthLimit(String title, Unit unit, double value, String reason) {
        bound = new Bound(title, unit, value, reason);
    }

    public Bound bound() {
        return bound;
    }

    /** Metres, or a bare factor. */
    double value() {
        return bound.value();
    }
}
