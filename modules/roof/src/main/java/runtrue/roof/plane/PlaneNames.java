package runtrue.roof.plane;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;
import runtrue.ifc.Element;
import runtrue.roof.Ids;
import runtrue.roof.Penetration;
import runtrue.roof.RoofPlane;

/**
 * Gives planes ids that stay from drop to drop (made from GlobalIds and the way the plane falls) and names that people
 * can use on site (building and compass side).
 */
public final class PlaneNames {
    private static final String[] SIDES = {
        "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"
    };

    private PlaneNames() {}

    /** The same planes with ids and names, by id. */
    public static List<RoofPlane> named(List<RoofPlane> planes) {
        List<RoofPlane> ordered = new ArrayList<>(planes);
        ordered.sort(Comparator.comparing(PlaneNames::key)
                .thenComparingDouble(p -> rounded(middle(p).getX()))
                .thenComparingDouble(p -> rounded(middle(p).getY()))
                .thenComparingDouble(p -> rounded(middle(p).getZ())));
        Map<String, Integer> sameKey = new HashMap<>();
        Map<String, List<RoofPlane>> sameName = new TreeMap<>();
        for (RoofPlane plane : ordered) {
            int ordinal = sameKey.merge(key(plane), 1, Integer::sum);
            String id = Ids.of("P", key(plane) + "/" + ordinal);
            sameName.computeIfAbsent(baseName(plane), n -> new ArrayList<>()).add(with(plane, id, ""));
        }
        List<RoofPlane> named = new ArrayList<>();
        sameName.forEach((name, group) -> {
            for (int i = 0; i < group.size(); i++) {
                RoofPlane plane = group.get(i);
                named.add(with(plane, plane.id(), group.size() == 1 ? name : name + " " + (i + 1)));
            }
        });
        named.sort(Comparator.comparing(RoofPlane::id));
        return named;
    }

    /** First GlobalId and the octant of the fall: stays when a plane is trimmed or its pitch is adjusted. */
    private static String key(RoofPlane plane) {
        return plane.elements().get(0).element().globalId() + "/" + side(plane);
    }

    private static String baseName(RoofPlane plane) {
        Element element = plane.elements().get(0).element();
        String place = !plane.building().isEmpty()
                ? plane.building()
                : !element.name().isEmpty() ? element.name() : element.ifcClass();
        return place + " / " + side(plane) + " plane";
    }

    private static String side(RoofPlane plane) {
        if (plane.azimuth().isEmpty()) {
            return plane.curve().isPresent() ? "curved" : "level";
        }
        double azimuth = plane.azimuthTrueNorth().orElse(plane.azimuth().getAsDouble());
        String side = SIDES[(int) Math.floorMod(Math.round(azimuth / (Math.PI / 4)), 8L)];
        return plane.curve().isPresent() ? side + " curved" : side;
    }

    private static Vector3D middle(RoofPlane plane) {
        Coordinate centre = plane.outline().getCentroid().getCoordinate();
        return plane.frame().at(centre.x, centre.y);
    }

    /** To the centimetre: order must not hang on rounding. */
    private static double rounded(double value) {
        return Math.rint(value * 100) / 100;
    }

    private static RoofPlane with(RoofPlane p, String id, String name) {
        List<Penetration> penetrations = new ArrayList<>();
        for (Penetration hole : p.penetrations()) {
            penetrations.add(new Penetration(
                    id + "/H" + (penetrations.size() + 1), hole.outline(), hole.width(), hole.length(), hole.area()));
        }
        return new RoofPlane(
                id,
                name,
                p.frame(),
                p.outline(),
                p.pitch(),
                p.azimuth(),
                p.azimuthTrueNorth(),
                p.area(),
                p.grossArea(),
                p.planArea(),
                p.grossPlanArea(),
                p.eaveLevel(),
                p.ridgeLevel(),
                p.thickness(),
                p.building(),
                p.storey(),
                penetrations,
                p.elements(),
                p.remarks(),
                p.curve());
    }
}
