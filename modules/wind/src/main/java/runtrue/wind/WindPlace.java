package runtrue.wind;

import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Geometry;

/**
 * Part of one plane where the same zones lie over each other for all winds: the envelope of directions at a place.
 *
 * @param slope id of the plane
 * @param region in plan, metres
 * @param trueArea on the slope, square metres
 * @param zones one for each wind
 */
public record WindPlace(String slope, Geometry region, double trueArea, List<ZonePressure> zones) {
    public WindPlace {
        zones = List.copyOf(zones);
    }

    /** In plan, square metres. */
    public double planArea() {
        return region.getArea();
    }

    /** Greatest suction of all winds, pascals; absent when that of any zone here is not available. */
    public OptionalDouble suction(double area) {
        double greatest = 0;
        for (ZonePressure zone : zones) {
            OptionalDouble suction = zone.pressure().at(area).suction();
            if (suction.isEmpty()) {
                return OptionalDouble.empty();
            }
            greatest = Math.max(greatest, suction.getAsDouble());
        }
        return OptionalDouble.of(greatest);
    }

    /** Greatest pressure on to the roof of all winds, pascals; absent when that of any zone here is not available. */
    public OptionalDouble pressing(double area) {
        double greatest = 0;
        for (ZonePressure zone : zones) {
            OptionalDouble pressing = zone.pressure().at(area).pressing();
            if (pressing.isEmpty()) {
                return OptionalDouble.empty();
            }
            greatest = Math.max(greatest, pressing.getAsDouble());
        }
        return OptionalDouble.of(greatest);
    }

    /** The zone whose suction governs here, or the first one that is not available. */
    public ZonePressure governing(double area) {
        ZonePressure governing = zones.get(0);
        double greatest = -1;
        for (ZonePressure zone : zones) {
            OptionalDouble suction = zone.pressure().at(area).suction();
            if (suction.isEmpty()) {
                return zone;
            }
            if (suction.getAsDouble() > greatest) {
                greatest = suction.getAsDouble();
                governing = zone;
            }
        }
        return governing;
    }
}
