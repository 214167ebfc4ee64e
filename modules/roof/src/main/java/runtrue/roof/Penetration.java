package runtrue.roof;

import org.locationtech.jts.geom.Polygon;

/**
 * A hole in a plane.
 *
 * @param outline in the plane's u, v
 * @param width greatest extent across the fall, metres
 * @param length greatest extent along the fall, metres
 * @param area true area, square metres
 */
public record Penetration(String id, Polygon outline, double width, double length, double area) {}
