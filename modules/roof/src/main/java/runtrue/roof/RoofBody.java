package runtrue.roof;

import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * Planes that belong to one roof: they share edges or adjoin in plan.
 *
 * @param id stable
 * @param planes ids
 * @param plan union of the planes in plan, metres, x and y moved by the drop origin
 * @param width short side of the least rectangle around the plan, metres
 * @param length its long side
 * @param eaveLevel lowest level of its planes, metres, world Z
 * @param ridgeLevel highest level
 */
public record RoofBody(
        String id,
        List<String> planes,
        Geometry plan,
        double width,
        double length,
        double eaveLevel,
        double ridgeLevel) {
    public RoofBody {
        planes = List.copyOf(planes);
    }
}
