package runtrue.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/** Areas and volumes of faces, and upward faces grouped by plane in the way the reference data was made. */
public final class UpwardPlanes {
    private static final double SAME_DIRECTION = Math.cos(Math.toRadians(0.2));
    private static final double SAME_OFFSET = 0.002;
    private static final double LEAST_UP = 0.05;
    private static final double LEAST_AREA = 0.05;

    private UpwardPlanes() {}

    /** One plane; degrees and square metres, azimuth of the fall clockwise from +Y, NaN when level. */
    record Plane(double pitch, double azimuth, double area, double planArea) {}

    static List<Plane> of(List<Face> faces) {
        List<Face> upward = new ArrayList<>(
                faces.stream().filter(face -> face.normal().getZ() > LEAST_UP).toList());
        upward.sort(Comparator.comparingDouble(face -> -area(face)));
        List<Face> seeds = new ArrayList<>();
        List<Double> areas = new ArrayList<>();
        for (Face face : upward) {
            int group = 0;
            while (group < seeds.size() && !samePlane(seeds.get(group), face)) {
                group++;
            }
            if (group == seeds.size()) {
                seeds.add(face);
                areas.add(0.0);
            }
            areas.set(group, areas.get(group) + area(face));
        }
        List<Plane> planes = new ArrayList<>();
        for (int i = 0; i < seeds.size(); i++) {
            if (areas.get(i) >= LEAST_AREA) {
                planes.add(plane(seeds.get(i).normal(), areas.get(i)));
            }
        }
        return planes;
    }

    private static Plane plane(Vector3D n, double area) {
        double pitch = Math.toDegrees(Math.acos(Math.min(1, n.getZ())));
        double azimuth = pitch < 0.05 ? Double.NaN : (Math.toDegrees(Math.atan2(n.getX(), n.getY())) + 360) % 360;
        return new Plane(pitch, azimuth, area, area * n.getZ());
    }

    private static boolean samePlane(Face seed, Face face) {
        return seed.normal().dot(face.normal()) >= SAME_DIRECTION
                && Math.abs(seed.normal()
                                .dot(face.outline()
                                        .get(0)
                                        .subtract(seed.outline().get(0))))
                        <= SAME_OFFSET;
    }

    public static double area(Face face) {
        Vector3D sum = doubleArea(face.outline());
        for (List<Vector3D> hole : face.holes()) {
            sum = sum.add(doubleArea(hole));
        }
        return 0.5 * sum.dot(face.normal());
    }

    private static Vector3D doubleArea(List<Vector3D> loop) {
        Vector3D sum = Vector3D.ZERO;
        for (int i = 1; i + 1 < loop.size(); i++) {
            Vector3D a = loop.get(i).subtract(loop.get(0));
            sum = sum.add(a.cross(loop.get(i + 1).subtract(loop.get(0))));
        }
        return sum;
    }

    /** Enclosed volume by the divergence theorem. */
    public static double volume(List<Face> faces) {
        Vector3D origin = faces.get(0).outline().get(0);
        double sum = 0;
        for (Face face : faces) {
            sum += area(face) * face.normal().dot(face.outline().get(0).subtract(origin));
        }
        return sum / 3;
    }
}
