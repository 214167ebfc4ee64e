package runtrue.wind;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;
import runtrue.wind.plan.Regions;

/**
 * Part of one plane where the same kind of zone lifts hardest, whichever wind that is for: what a sheeter sees of the
 * envelope. They cover each plane without overlap.
 *
 * @param slope id of the plane
 * @param name of the zone as the standard names it
 * @param region in plan, metres
 * @param trueArea on the slope, square metres
 * @param suction greatest of all winds, pascals; absent when that of any zone here is not available
 * @param pressing greatest on to the roof of all winds, pascals; absent when not available
 * @param how the figures of the suction, or why it is not available
 * @param places what it is made of
 */
public record GoverningZone(
        String slope,
        String name,
        Geometry region,
        double trueArea,
        OptionalDouble suction,
        OptionalDouble pressing,
        String how,
        List<WindPlace> places) {
    public GoverningZone {
        places = List.copyOf(places);
    }

    /** Zones of one plane with the same name and, in whole pascals, suction are one. */
    private record Kind(String slope, String name, long pascals) {}

    /**
     * Of all planes of a result.
     *
     * @param area loaded, square metres; pressures of small areas are higher
     */
    public static List<GoverningZone> of(WindResult result, double area) {
        Map<Kind, List<WindPlace>> byKind = new LinkedHashMap<>();
        for (WindPlace place : result.places()) {
            OptionalDouble suction = place.suction(area);
            long pascals = suction.isPresent() ? Math.round(suction.getAsDouble()) : -1;
            String name = place.governing(area).zone().name();
            byKind.computeIfAbsent(new Kind(place.slope(), name, pascals), k -> new ArrayList<>())
                    .add(place);
        }
        List<GoverningZone> zones = new ArrayList<>();
        byKind.forEach((kind, places) -> zones.add(together(kind, places, area)));
        return zones;
    }

    private static GoverningZone together(Kind kind, List<WindPlace> places, double area) {
        WindPlace first = places.get(0);
        ZonePressure governing = first.governing(area);
        boolean allKnown = places.stream().allMatch(p -> p.pressing(area).isPresent());
        OptionalDouble pressing = allKnown
                ? places.stream().mapToDouble(p -> p.pressing(area).orElse(0)).max()
                : OptionalDouble.empty();
        return new GoverningZone(
                kind.slope(),
                kind.name(),
                Regions.union(places.stream().map(WindPlace::region).toList()),
                places.stream().mapToDouble(WindPlace::trueArea).sum(),
                first.suction(area),
                pressing,
                governing.zone().label() + ": " + governing.pressure().at(area).how(),
                places);
    }
}
