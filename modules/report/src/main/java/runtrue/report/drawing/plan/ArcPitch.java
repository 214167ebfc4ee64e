package runtrue.report.drawing.plan;

import java.util.List;
import runtrue.report.drawing.svg.Figures;
import runtrue.result.PlaneResult;
import runtrue.result.PlaneResult.Curve;
import runtrue.result.PlaneResult.Station;

/** The pitch of a curved plane in words: how steep and where. */
public final class ArcPitch {
    /** An end that is higher or lower than the middle by less is level with it, metres. */
    private static final double SAME_LEVEL = 0.01;

    private ArcPitch() {}

    /** For example {@code 0.0° at the crown to 22.0° at the eaves}; a plain {@code 6.0°} of a flat plane. */
    public static String of(PlaneResult plane) {
        return plane.curve().map(ArcPitch::of).orElseGet(() -> Roof.pitch(plane));
    }

    static String of(Curve curve) {
        String least = Figures.fixed(curve.leastPitchDegrees(), 1) + "°";
        String greatest = Figures.fixed(curve.greatestPitchDegrees(), 1) + "°";
        List<Station> stations = curve.stations();
        double start = height(stations.get(0));
        double end = height(stations.get(stations.size() - 1));
        double highest = stations.stream().mapToDouble(ArcPitch::height).max().orElseThrow();
        double lowest = stations.stream().mapToDouble(ArcPitch::height).min().orElseThrow();
        if (highest > Math.max(start, end) + SAME_LEVEL) {
            return least + " at the crown to " + greatest + " at the " + (curve.fallsBothWays() ? "eaves" : "eave");
        }
        if (lowest < Math.min(start, end) - SAME_LEVEL) {
            return least + " in the hollow to " + greatest + " at the ends";
        }
        boolean steeperAtStart =
                Math.abs(rise(stations.get(0), stations.get(1))) > Math.abs(rise(last(stations, 2), last(stations, 1)));
        boolean steeperAtEave = steeperAtStart == start < end;
        return (steeperAtEave ? least : greatest) + " at the top to " + (steeperAtEave ? greatest : least)
                + " at the eave";
    }

    private static Station last(List<Station> stations, int fromEnd) {
        return stations.get(stations.size() - fromEnd);
    }

    private static double height(Station station) {
        return station.point().zMetres();
    }

    private static double rise(Station from, Station to) {
        return (height(to) - height(from)) / (to.vMetres() - from.vMetres());
    }
}
