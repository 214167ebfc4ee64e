package runtrue.wind;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Pressures that the project's engineer gives, which come before those of any standard. Either with the width of the
 * engineer's own edge strip, and then for {@code corner}, {@code edge} and {@code interior}; or for the zones of the
 * standard by their names.
 *
 * @param reference the document they stand in, with its revision
 * @param stripWidth of the edge strip in plan, metres; absent when the zones are those of the standard
 * @param zones net pressures by name of zone
 */
public record GivenPressures(String reference, OptionalDouble stripWidth, Map<String, Given> zones) {
    /**
     * Net pressure on a zone, both pascals, 0 or more.
     *
     * @param suction away from the roof
     * @param pressing on to the roof; absent when not stated
     */
    public record Given(double suction, OptionalDouble pressing) {
        public Given {
            if (!(suction >= 0) || !(pressing.orElse(0) >= 0)) {
                throw new WindException(
                        "A given pressure is below 0; suction and pressing are both told as positive pascals.");
            }
        }
    }

    public GivenPressures {
        zones = Map.copyOf(zones);
        if (zones.isEmpty()) {
            throw new WindException("The pressures of '" + reference + "' name no zone.");
        }
        if (stripWidth.isPresent() && !(stripWidth.getAsDouble() > 0)) {
            throw new WindException("The edge strip of '" + reference + "' is " + stripWidth.getAsDouble()
                    + " m wide; it has to be wider than 0.");
        }
    }

    /** Of a zone, whatever its size; not available when the engineer does not name the zone. */
    public LoadedPressure of(String zone) {
        WindSource source = new WindSource("Project engineer", reference, Certainty.GIVEN, "");
        Given given = zones.get(zone);
        Pressure pressure = given == null
                ? Pressure.notAvailable(
                        "the engineer's pressures name no zone " + zone + ", only " + new TreeMap<>(zones).keySet()
                                + ".",
                        source)
                : new Pressure(
                        OptionalDouble.of(given.suction()),
                        given.pressing(),
                        "Given by the project's engineer in " + reference + ".",
                        source);
        return area -> pressure;
    }
}
