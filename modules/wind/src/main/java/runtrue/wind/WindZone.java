package runtrue.wind;

import org.locationtech.jts.geom.Geometry;
import runtrue.wind.form.WindSlope;

/**
 * Part of one plane that a standard has one coefficient for.
 *
 * @param slope id of the plane
 * @param wind what wind it is for: a direction of EN 1991-1-4, or any
 * @param name as the standard names it
 * @param region in plan, metres
 * @param trueArea on the slope, square metres
 */
public record WindZone(String slope, String wind, String name, Geometry region, double trueArea) {
    public static WindZone of(WindSlope slope, String wind, String name, Geometry region) {
        return new WindZone(slope.id(), wind, name, region, region.getArea() * slope.slopeFactor());
    }

    /** In plan, square metres. */
    public double planArea() {
        return region.getArea();
    }

    public String label() {
        return wind.isEmpty() ? name : name + " (" + wind + ")";
    }
}
