package runtrue.samples.expected;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The figures of sample-models/README.md, typed in as they stand there: none is computed, least of all by the code that
 * writes the models.
 */
public final class ExpectedDrops {
    private static final String ALONG_HIPS = "along its hips, between two lines";
    private static final String ALONG_VALLEY = "along the valley, between two lines";

    private ExpectedDrops() {}

    /** All drops, in the README's order. */
    public static List<ExpectedDrop> all() {
        return List.of(kilnHall(), lockOffice(), cartShed(), ropeWalk(), tallySheds(), DyeWorksFigures.expected());
    }

    public static ExpectedDrop kilnHall() {
        List<Double> lines = List.of(0.25, 1.5, 2.85, 4.2, 5.55, 6.9, 8.25, 9.6, 10.95, 12.2);
        var south = new ExpectedSupports(lines, 1.25, 1.25, 1.25, 1.35, 2.7, 0.25, 0.2180);
        var north = new ExpectedSupports(lines, 1.25, 1.25, 1.25, 1.35, 1.35, 0.25, 0.2180);
        var leanTo = new ExpectedSupports(List.of(0.25, 1.25, 2.5, 3.75, 5.0, 6.0), 1, 1, 1, 1.25, 1.25, 0.25, 0.2009);
        return new ExpectedDrop(
                "kiln-hall",
                List.of(
                        plane("Hall roof south", 6, 165, 12.4180, 448.7744, 446.3160, 73, 0.3, south),
                        plane("Hall roof north", 6, 345, 12.4180, 450.7744, 448.3050, 73, 0.3, north),
                        plane("Lean-to roof slab", 1, 345, 6.2009, 150.6829, 150.6600, 49, 0.3, leanTo)),
                Map.of("eave", 96.9, "ridge", 36.3, "verge", 62.0740, "abutment", 24.3),
                List.of(
                        ExpectedFinding.measured(
                                "Hall roof south", "internal span", 2.7, "m", "bay C-D, between grids 1 and 2"),
                        ExpectedFinding.measured(
                                "Hall roof south", "span not walkable", 2.7, "m", "bay C-D, between grids 1 and 2"),
                        ExpectedFinding.measured("Lean-to roof slab", "pitch", 1, "degree", "bays B to F"),
                        ExpectedFinding.measured("Hall roof north", "support too low", 0.012, "m", "line 7, bay D-E"),
                        ExpectedFinding.measured(
                                "Hall roof north", "proud of the supports", 0.008, "m", "line 4, grid B"),
                        ExpectedFinding.measured("Hall roof south", "clip load", 1.2827, "kN", "zone F along the eave"),
                        ExpectedFinding.measured(
                                "Hall roof north", "clip load", 1.2827, "kN", "zone F along the eave")));
    }

    public static ExpectedDrop lockOffice() {
        var supports =
                new ExpectedSupports(List.of(0.25, 1.35, 2.7, 4.05, 5.15), 1.1, 1.1, 1.35, 1.35, 1.35, 0.25, 0.2667);
        List<ExpectedPlane> planes = List.of(
                plane("Roof A south", 22.6199, 180, 5.4167, 104, 96, 49, 0.2, supports),
                plane("Roof B east end", 22.6199, 90, 5.4167, 27.0833, 25, 20, 0.5, supports),
                plane("Roof C north", 22.6199, 0, 5.4167, 76.9167, 71, 39, 0.2, supports),
                plane("Roof D east", 22.6199, 90, 5.4167, 65, 60, 34, 0.5, supports),
                plane("Roof E north end", 22.6199, 0, 5.4167, 27.0833, 25, 20, 0.5, supports),
                plane("Roof F west", 22.6199, 270, 5.4167, 92.0833, 85, 44, 0.5, supports));
        List<ExpectedFinding> findings = new ArrayList<>();
        for (ExpectedPlane plane : planes) {
            String name = plane.elements().get(0);
            findings.add(ExpectedFinding.measured(name, "ridge overhang", 1.4042, "m", ALONG_HIPS));
        }
        findings.add(ExpectedFinding.measured("Roof C north", "eave overhang", 1.4042, "m", ALONG_VALLEY));
        findings.add(ExpectedFinding.measured("Roof D east", "eave overhang", 1.4042, "m", ALONG_VALLEY));
        return new ExpectedDrop(
                "lock-office", planes, Map.of("eave", 92.4, "hip", 36.8579, "valley", 7.3716, "ridge", 26.2), findings);
    }

    public static ExpectedDrop cartShed() {
        var supports = new ExpectedSupports(
                List.of(0.2286, 1.3716, 2.5908, 3.81, 5.0292, 6.2484, 7.3914),
                1.143,
                1.143,
                1.143,
                1.2192,
                1.2192,
                0.2286,
                0.2550);
        return new ExpectedDrop(
                "cart-shed",
                List.of(plane("Shed roof", 4.7636, 180, 7.6464, 142.1682, 141.6771, 38, 0.0928, supports)),
                Map.of("eave", 18.5928, "head", 18.5928, "verge", 15.2928),
                List.of());
    }

    public static ExpectedDrop ropeWalk() {
        var south = new ExpectedSupports(everyMetreAndAHalf(73.5, 74.75), 1.25, 1.25, 1.25, 1.5, 1.5, 0.25, 0.3215);
        var north = new ExpectedSupports(everyMetreAndAHalf(28.5, 29.75), 1.25, 1.25, 1.25, 1.5, 1.5, 0.25, 0.2786);
        List<String> panels = List.of("Roof south panel 1", "Roof south panel 2", "Roof south panel 3");
        return new ExpectedDrop(
                "rope-walk",
                List.of(
                        new ExpectedPlane(panels, 2.5, 180, 75.0715, 2702.5722, 2700, 72, 0.5, List.of(south)),
                        plane("Roof north", 2.5, 0, 30.0286, 1081.0289, 1080, 72, 0.5, north)),
                Map.of("eave", 72.0, "ridge", 36.0, "verge", 210.2001),
                List.of(ExpectedFinding.measured(
                        "Roof south panel 1", "unlapped length", 75.071, "m", "the whole south slope")));
    }

    public static ExpectedDrop tallySheds() {
        String formula = "=HYPERLINK(\"http://example.invalid\",\"x\")";
        var supports = new ExpectedSupports(
                List.of(0.25, 1.3, 2.45, 3.6, 4.75, 5.8), 1.05, 1.05, 1.05, 1.15, 1.15, 0.25, 0.2229);
        return new ExpectedDrop(
                "tally-sheds",
                List.of(
                        plane("Roof shed 1", 5, 180, 6.0229, 61.4338, 61.2, 21, 0.2, supports),
                        plane(formula, 5, 180, 6.0229, 61.4338, 61.2, 21, 0.2, supports),
                        new ExpectedPlane(List.of("Roof shed 5"), 5, 180, 6.0229, 61.4338, 61.2, 21, 0.2, List.of())),
                Map.of("eave", 51.0, "head", 30.6, "verge", 48.4246),
                List.of(
                        ExpectedFinding.of("Roof shed 1", "no predefined type", "shed 1"),
                        ExpectedFinding.measured(formula, "stated pitch", 12, "degree", "shed 2"),
                        ExpectedFinding.of("Roof shed 3", "no representation", "shed 3"),
                        ExpectedFinding.of("Barrel roof shed 4", "missing supports", "shed 4"),
                        ExpectedFinding.of("Roof shed 5", "missing supports", "shed 5"),
                        ExpectedFinding.of("Roof shed 5", "not contained", "shed 5"),
                        ExpectedFinding.measured("Roof shed 5", "stated area", 5.7074, "m2", "shed 5"),
                        ExpectedFinding.of("Purlin 1.2", "duplicate GlobalId", "shed 1, second line from the eave"),
                        ExpectedFinding.of("Tally Sheds", "no storey", "the building")));
    }

    static ExpectedPlane plane(
            String name,
            double pitch,
            double azimuth,
            double run,
            double trueArea,
            double planArea,
            int strips,
            double lastStrip,
            ExpectedSupports supports) {
        return new ExpectedPlane(
                List.of(name), pitch, azimuth, run, trueArea, planArea, strips, lastStrip, List.of(supports));
    }

    /** The rope walk's lines: "0.25, 1.5, then every 1.5 up to" the last but one, "and" the last. */
    private static List<Double> everyMetreAndAHalf(double lastButOne, double last) {
        List<Double> lines = new ArrayList<>(List.of(0.25));
        for (int i = 1; 1.5 * i <= lastButOne; i++) {
            lines.add(1.5 * i);
        }
        lines.add(last);
        return lines;
    }
}
