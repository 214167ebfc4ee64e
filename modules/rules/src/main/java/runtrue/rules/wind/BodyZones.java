package runtrue.rules.wind;

import java.util.List;
import java.util.Map;

/**
 * The zones of one roof body.
 *
 * @param body its id
 * @param lacking planes by id that zones could not be formed on, with the reason
 * @param winds what holds for the body as a whole, one for each part that stands apart in plan; empty where pressures are
 *     not worked out by a standard
 */
public record BodyZones(String body, List<PlaneZone> zones, Map<String, String> lacking, List<BodyWind> winds) {
    public BodyZones {
        zones = List.copyOf(zones);
        lacking = Map.copyOf(lacking);
        winds = List.copyOf(winds);
    }
}
