package runtrue.rules.judge;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import runtrue.rules.wind.PlaneZone;

/**
 * What a zone is called.
 *
 * @param words {@code the corner zone}, {@code zone F}, or {@code zone F at 1.28 kPa} where the plane has several F
 * @param key tells it from the other zones of the plane, the same from drop to drop
 */
record ZoneName(String words, String key) {
    static ZoneName of(PlaneZone zone, List<PlaneZone> ofPlane) {
        String kind = zone.zone().kind().label();
        if (zone.name().equals(kind)) {
            return new ZoneName("the " + kind + " zone", kind);
        }
        String words = "zone " + zone.name();
        List<PlaneZone> namesakes = ofPlane.stream()
                .filter(z -> z.name().equals(zone.name()))
                .sorted(Comparator.comparingDouble((PlaneZone z) -> -suction(z).orElse(Double.MAX_VALUE)))
                .toList();
        if (namesakes.size() == 1) {
            return new ZoneName(words, words);
        }
        String at = suction(zone).isPresent()
                ? String.format(Locale.ROOT, " at %.2f kPa", suction(zone).getAsDouble() / 1000)
                : " without pressure";
        return new ZoneName(words + at, words + "/" + (namesakes.indexOf(zone) + 1));
    }

    private static OptionalDouble suction(PlaneZone zone) {
        return zone.uplift().suction();
    }
}
