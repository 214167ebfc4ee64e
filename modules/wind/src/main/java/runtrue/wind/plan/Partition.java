package runtrue.wind.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import runtrue.wind.WindZone;
import runtrue.wind.form.WindSlope;

/**
 * Cuts a plane into zones: of zones that lie over each other the one named first has the place, and the last one has
 * what is left, so that the zones cover the plane once.
 */
public final class Partition {
    private final Map<String, List<Geometry>> named = new LinkedHashMap<>();

    /** The next zone by severity; the same name may come again. */
    public Partition then(String name, Geometry region) {
        named.computeIfAbsent(name, n -> new ArrayList<>()).add(region);
        return this;
    }

    /** Zones that have any area, with the rest under the last name. */
    public List<WindZone> zones(WindSlope slope, String wind, String rest) {
        List<WindZone> zones = new ArrayList<>();
        Geometry left = slope.plan();
        for (Map.Entry<String, List<Geometry>> entry : named.entrySet()) {
            Geometry region = Regions.union(entry.getValue());
            add(zones, slope, wind, entry.getKey(), Regions.intersection(left, region));
            left = Regions.difference(left, region);
        }
        add(zones, slope, wind, rest, left);
        return zones;
    }

    private static void add(List<WindZone> zones, WindSlope slope, String wind, String name, Geometry region) {
        if (region.getArea() > 0) {
            zones.add(WindZone.of(slope, wind, name, region));
        }
    }
}
