package runtrue.wind.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import runtrue.wind.WindPlace;
import runtrue.wind.ZonePressure;
import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;

/** Lays the zones of all winds over each other. */
public final class Places {
    private Places() {}

    /** Places of every plane of the roof; those with the same zones are one, in however many parts. */
    public static List<WindPlace> of(WindRoof roof, List<ZonePressure> zones) {
        List<WindPlace> places = new ArrayList<>();
        for (WindSlope slope : roof.slopes()) {
            Map<String, List<ZonePressure>> byWind = new LinkedHashMap<>();
            zones.stream()
                    .filter(z -> z.zone().slope().equals(slope.id()))
                    .forEach(z -> byWind.computeIfAbsent(z.zone().wind(), w -> new ArrayList<>())
                            .add(z));
            if (!byWind.isEmpty()) {
                places.addAll(overlaid(slope, List.copyOf(byWind.values())));
            }
        }
        return places;
    }

    private static List<WindPlace> overlaid(WindSlope slope, List<List<ZonePressure>> layers) {
        Map<List<ZonePressure>, Geometry> cells = new LinkedHashMap<>();
        cells.put(List.of(), slope.plan());
        for (List<ZonePressure> layer : layers) {
            Map<List<ZonePressure>, Geometry> finer = new LinkedHashMap<>();
            cells.forEach((key, region) -> {
                for (ZonePressure zone : layer) {
                    Geometry part = Regions.intersection(region, zone.zone().region());
                    if (part.getArea() > 0) {
                        List<ZonePressure> longer = new ArrayList<>(key);
                        longer.add(zone);
                        finer.put(List.copyOf(longer), part);
                    }
                }
            });
            cells = finer;
        }
        List<WindPlace> places = new ArrayList<>();
        cells.forEach((key, region) ->
                places.add(new WindPlace(slope.id(), region, region.getArea() * slope.slopeFactor(), key)));
        return places;
    }
}
