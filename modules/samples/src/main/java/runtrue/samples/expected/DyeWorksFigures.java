package runtrue.samples.expected;

import java.util.List;
import java.util.Map;

/** The figures of the dye works in sample-models/README.md. */
final class DyeWorksFigures {
    private static final String DYE_HOUSE = "Dye house roof";
    private static final String BOILER_HOUSE = "Boiler house roof";
    private static final String STORE = "Store roof";
    private static final String LOFT = "Loft roof";

    private DyeWorksFigures() {}

    static ExpectedDrop expected() {
        var dye = new ExpectedSupports(
                List.of(0.25, 1.75, 3.35, 4.95, 6.55, 8.1, 9.65), 1.5, 1.55, 1.59, 1.6, 1.6, 0.25, 0.3676);
        var boiler = new ExpectedSupports(
                List.of(0.3, 1.8, 3.2, 4.6, 6.0, 7.4, 8.8, 10.2, 11.7), 1.5, 1.5, 1.5, 1.4, 1.4, 0.3, 0.3661);
        var store = new ExpectedSupports(List.of(0.25, 2.2, 3.8), 1.95, 1.6, 1.95, 0, 0, 0.25, 0.2153);
        var loft = new ExpectedSupports(List.of(0.25, 1.45, 2.65, 3.75), 1.2, 1.1, 1.2, 1.2, 1.2, 0.25, 0.2653);
        return new ExpectedDrop(
                "dye-works",
                List.of(
                        ExpectedDrops.plane(DYE_HOUSE, 3.4, 180, 10.0176, 119.4934, 119.2830, 31, 0.1, dye),
                        ExpectedDrops.plane(BOILER_HOUSE, 6, 180, 12.0661, 145.9998, 145.2, 31, 0.1, boiler),
                        ExpectedDrops.plane(STORE, 5, 180, 4.0153, 32.1222, 32, 20, 0.4, store),
                        ExpectedDrops.plane(LOFT, 5, 180, 4.0153, 32.1222, 32, 20, 0.4, loft)),
                Map.of("eave", 64.2, "head", 32.1, "abutment", 20.1, "verge", 93.4597),
                findings());
    }

    private static List<ExpectedFinding> findings() {
        return List.of(
                ExpectedFinding.measured(DYE_HOUSE, "water in a pan", 1.0503, "l/s", "every whole pan"),
                ExpectedFinding.measured(DYE_HOUSE, "wide penetration", 1.2, "m", "hatch"),
                ExpectedFinding.measured(DYE_HOUSE, "penetration near an edge", 0.2, "m", "hatch"),
                ExpectedFinding.measured(DYE_HOUSE, "penetration that locks sheets", 0.0084759, "m", "vent"),
                ExpectedFinding.measured(DYE_HOUSE, "water beside a penetration", 0.8513, "l/s", "vent"),
                ExpectedFinding.measured(DYE_HOUSE, "pitch after deflection", 2.9, "degree", "the plane"),
                ExpectedFinding.measured(DYE_HOUSE, "sliver", 0.1, "m", "last strip"),
                ExpectedFinding.measured(BOILER_HOUSE, "sliver", 0.1, "m", "last strip"),
                ExpectedFinding.measured(BOILER_HOUSE, "unlapped length", 12.066, "m", "the whole slope"),
                ExpectedFinding.measured(BOILER_HOUSE, "pitch of laps", 6, "degree", "the whole slope"),
                ExpectedFinding.measured(DYE_HOUSE, "narrow flange", 0.05, "m", "line 4"),
                ExpectedFinding.measured(DYE_HOUSE, "thin support", 0.0012, "m", "line 4"),
                ExpectedFinding.measured(DYE_HOUSE, "metals of fixing and support", 0.7, "V", "line 4"),
                ExpectedFinding.measured(DYE_HOUSE, "short lap of purlins", 0.3, "m", "line 6"),
                ExpectedFinding.measured(DYE_HOUSE, "run-off from nobler metal", 0.85, "V", "below the boiler house"),
                ExpectedFinding.of(STORE, "run-off on bare zinc", "below the loft"),
                ExpectedFinding.of(BOILER_HOUSE, "other metal than the system's", "copper"),
                ExpectedFinding.of(LOFT, "other metal than the system's", "aluminium-zinc"),
                ExpectedFinding.of(DYE_HOUSE, "clamped loads", "both panels"),
                ExpectedFinding.of(DYE_HOUSE, "load in an edge zone", "panel 1"),
                ExpectedFinding.measured(DYE_HOUSE, "metal of a load", 0.3, "V", "both panels"),
                ExpectedFinding.measured(DYE_HOUSE, "work near an opening", 1.7, "m", "panel 1"),
                ExpectedFinding.measured(STORE, "end span", 1.95, "m", "lines 1 and 2"),
                ExpectedFinding.measured(STORE, "span not walkable", 1.95, "m", "lines 1 and 2"),
                ExpectedFinding.measured(STORE, "off the build-up", 0.03, "m", "the plane"),
                ExpectedFinding.measured("Tight barrel", "radius", 8, "m", "canopy"),
                ExpectedFinding.measured("Tight barrel", "flat crown", 0.8378, "m", "canopy"),
                ExpectedFinding.measured("Flat barrel", "pitch at the eave", 2.5, "degree", "canopy"),
                ExpectedFinding.measured("Trough", "hollow", 0.0571, "m", "canopy"));
    }
}
