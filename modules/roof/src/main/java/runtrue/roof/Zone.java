package runtrue.roof;

import org.locationtech.jts.geom.Geometry;

/**
 * A zone within one plane.
 *
 * @param width zone width in plan, metres; 0 where it has no one width
 * @param area true area, square metres
 * @param region in the plane's u, v
 * @param tributary greatest length of sheet that one support carries within the zone (half the spans on either side,
 *     whole overhangs), metres; 0 when no support lies in it
 */
public record Zone(
        String body, String plane, ZoneKind kind, double width, double area, Geometry region, double tributary) {}
