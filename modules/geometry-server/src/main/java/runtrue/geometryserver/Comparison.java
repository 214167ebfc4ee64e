package runtrue.geometryserver;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import runtrue.ifc.IfcEntity;
import runtrue.shape.Shape;

/**
 * One element read by both engines.
 *
 * @param element for example {@code #12 (IfcSlab) "Roof" 2S8PiWcbHBVvIkcpdDcBw3}
 * @param differences by more than the tolerance; empty when they agree
 */
public record Comparison(String file, String element, List<Difference> differences) {
    public Comparison {
        differences = List.copyOf(differences);
    }

    /** What may differ. */
    public enum Quantity {
        VOLUME("volume", "m3"),
        UPWARD_AREA("upward area", "m2"),
        PITCH("mean pitch", "deg");

        private final String label;
        private final String unit;

        Quantity(String label, String unit) {
            this.label = label;
            this.unit = unit;
        }
    }

    /**
     * One quantity that differs.
     *
     * @param builtIn cubic metres, square metres or degrees
     * @param second likewise
     */
    public record Difference(Quantity quantity, double builtIn, double second) {
        /** {@code volume 1.200 m3 here, 1.100 m3 there}. */
        public String sentence() {
            return String.format(
                    Locale.ROOT,
                    "%s %.3f %s here, %.3f %s there",
                    quantity.label,
                    builtIn,
                    quantity.unit,
                    second,
                    quantity.unit);
        }
    }

    /**
     * How far two engines may be apart. Curves are followed by chords of different fineness, which takes up to 0.8 % of a
     * hollow section's area; flat faces agree a thousand times better.
     *
     * @param volume relative
     * @param area relative
     * @param pitch radians
     */
    public record Tolerance(double volume, double area, double pitch) {
        public static Tolerance standard() {
            return new Tolerance(0.01, 0.01, Math.toRadians(0.2));
        }

        /** {@code 1.0 % in volume, 1.0 % in upward area or 0.2 degrees in mean pitch}. */
        public String text() {
            return String.format(
                    Locale.ROOT,
                    "%.1f %% in volume, %.1f %% in upward area or %.1f degrees in mean pitch",
                    100 * volume,
                    100 * area,
                    Math.toDegrees(pitch));
        }
    }

    static Comparison of(IfcEntity element, Shape.Body builtIn, Shape.Body second, Tolerance tolerance) {
        Measured ours = Measured.of(builtIn);
        Measured theirs = Measured.of(second);
        List<Difference> found = new ArrayList<>();
        if (ours.volume().isPresent() && theirs.volume().isPresent()) {
            relative(Quantity.VOLUME, ours.volume(), theirs.volume(), tolerance.volume(), found);
        }
        relative(
                Quantity.UPWARD_AREA,
                OptionalDouble.of(ours.upwardArea()),
                OptionalDouble.of(theirs.upwardArea()),
                tolerance.area(),
                found);
        if (!(Math.abs(ours.pitch() - theirs.pitch()) <= tolerance.pitch())) {
            found.add(new Difference(Quantity.PITCH, Math.toDegrees(ours.pitch()), Math.toDegrees(theirs.pitch())));
        }
        return new Comparison(element.model().file().name(), named(element), found);
    }

    private static void relative(
            Quantity quantity, OptionalDouble ours, OptionalDouble theirs, double tolerance, List<Difference> found) {
        double a = ours.getAsDouble();
        double b = theirs.getAsDouble();
        if (!(Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b)))) {
            found.add(new Difference(quantity, a, b));
        }
    }

    static String named(IfcEntity element) {
        String name = element.text("Name");
        return element.label() + (name.isEmpty() ? " " : " \"" + name + "\" ") + element.text("GlobalId");
    }

    /** {@code #12 (IfcSlab) "Roof" 2S8…: volume 1.200 m3 here, 1.100 m3 there; …}. */
    public String sentence() {
        return element + ": "
                + String.join(
                        "; ", differences.stream().map(Difference::sentence).toList());
    }
}
