package runtrue.roof;

import java.util.List;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Polygon;

/**
 * One flat part of the roof that sheets run over without a break, made of one or many elements.
 *
 * @param id stable from drop to drop, made from GlobalIds
 * @param name for people, for example {@code Hall / south plane}
 * @param outline in the frame's u, v, metres, penetrations as holes
 * @param pitch radians to the horizontal
 * @param azimuth downslope direction in radians, clockwise from the model's +Y; empty when level
 * @param azimuthTrueNorth the same from true north; empty when level or when the model states no true north
 * @param area true area, penetrations off, square metres
 * @param grossArea with them
 * @param planArea projected to the ground, penetrations off
 * @param grossPlanArea with them
 * @param eaveLevel lowest point, metres, world Z (not moved)
 * @param ridgeLevel highest point, metres, world Z (not moved)
 * @param thickness of the elements, square to the plane, metres; empty for surfaces
 * @param elements it is made of
 * @param remarks how sure, for example {@code body not closed: outward side taken as up}
 */
public record RoofPlane(
        String id,
        String name,
        PlaneFrame frame,
        Polygon outline,
        double pitch,
        OptionalDouble azimuth,
        OptionalDouble azimuthTrueNorth,
        double area,
        double grossArea,
        double planArea,
        double grossPlanArea,
        double eaveLevel,
        double ridgeLevel,
        OptionalDouble thickness,
        String building,
        String storey,
        List<Penetration> penetrations,
        List<ReadElement> elements,
        List<String> remarks) {
    public RoofPlane {
        penetrations = List.copyOf(penetrations);
        elements = List.copyOf(elements);
        remarks = List.copyOf(remarks);
    }
}
