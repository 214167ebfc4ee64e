package runtrue.roof.stated;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.roof.ReadElement;
import runtrue.roof.RoofTolerance;
import runtrue.roof.skin.PlanarArea;
import runtrue.roof.skin.SkinFace;
import runtrue.roof.skin.SkinReader;
import runtrue.shape.Face;
import runtrue.shape.Tolerances;

/**
 * What the body of one roof element gives, by itself: as if nothing lay above it.
 *
 * @param slopes pitches of the upper skin with the area that falls so, largest area first
 * @param thicknesses from the largest face down to each parallel face below it, metres, greatest first: a body in layers
 *     has several
 */
record ElementMeasures(RoofAreas areas, List<Slope> slopes, List<Double> thicknesses) {
    /** A pitch in radians, and the true area that has it. */
    record Slope(double pitch, double area) {}

    /** Faces whose normals are farther down than this are the underside; a plumb cut is neither. */
    private static final double DOWN = -Math.cos(RoofTolerance.STEEPEST_ROOF.si());

    ElementMeasures {
        slopes = List.copyOf(slopes);
        thicknesses = List.copyOf(thicknesses);
    }

    static ElementMeasures of(ReadElement element, Tolerances tolerances) {
        List<SkinFace> skin = new ArrayList<>(new SkinReader(tolerances).read(element));
        skin.sort(Comparator.comparingDouble((SkinFace f) -> -areas(f).net()));
        List<Double> thicknesses = new ArrayList<>();
        if (!skin.isEmpty() && element.body().closed()) {
            thicknesses.addAll(below(skin.get(0), element.body().faces(), tolerances));
        }
        skin.removeAll(rebates(skin, thicknesses, tolerances));
        RoofAreas areas = body(element);
        List<Slope> slopes = new ArrayList<>();
        for (SkinFace face : skin) {
            RoofAreas of = areas(face);
            areas = areas.plus(of);
            add(slopes, new Slope(Math.acos(Math.min(1, face.normal().getZ())), of.net()), tolerances.angle());
        }
        slopes.sort(Comparator.comparingDouble((Slope s) -> -s.area()));
        return new ElementMeasures(areas, slopes, thicknesses);
    }

    private static RoofAreas areas(SkinFace face) {
        double gross = PlanarArea.vector(face.outline()).norm();
        double net = gross;
        for (List<Vector3D> hole : face.holes()) {
            net -= PlanarArea.vector(hole).norm();
        }
        double cosine = face.normal().getZ();
        return RoofAreas.ofSurface(net, gross, net * cosine, gross * cosine);
    }

    private static RoofAreas body(ReadElement element) {
        double under = 0;
        double all = 0;
        double flattened = 0;
        for (Face face : element.body().faces()) {
            double area = PlanarArea.vector(face.outline()).norm();
            for (List<Vector3D> hole : face.holes()) {
                area -= PlanarArea.vector(hole).norm();
            }
            all += area;
            flattened += area * Math.abs(face.normal().getZ());
            under += face.normal().getZ() < DOWN ? area : 0;
        }
        return new RoofAreas(0, 0, 0, 0, under, all, flattened / 2);
    }

    /** Distances to the faces that look the other way below a part of the face, greatest first. */
    private static List<Double> below(SkinFace top, List<Face> faces, Tolerances tolerances) {
        Vector3D across = top.normal().orthogonal();
        Vector3D up = top.normal().cross(across);
        List<Double> found = new ArrayList<>();
        for (Face face : faces) {
            double distance =
                    top.outline().get(0).subtract(face.outline().get(0)).dot(top.normal());
            boolean under = distance > tolerances.point() && distance <= RoofTolerance.DEEPEST_BUILD_UP.si();
            if (under
                    && -face.normal().dot(top.normal()) > Math.cos(tolerances.angle())
                    && overlap(top.outline(), face.outline(), across)
                    && overlap(top.outline(), face.outline(), up)) {
                found.add(distance);
            }
        }
        found.sort(Comparator.reverseOrder());
        return found;
    }

    private static boolean overlap(List<Vector3D> a, List<Vector3D> b, Vector3D axis) {
        DoubleSummaryStatistics of = extent(a, axis);
        DoubleSummaryStatistics with = extent(b, axis);
        return of.getMin() < with.getMax() && with.getMin() < of.getMax();
    }

    private static DoubleSummaryStatistics extent(List<Vector3D> ring, Vector3D axis) {
        return ring.stream().mapToDouble(p -> p.dot(axis)).summaryStatistics();
    }

    /** Strips of inner layers that look out at a stepped edge: parallel to the largest face, within its thickness. */
    private static List<SkinFace> rebates(List<SkinFace> skin, List<Double> thicknesses, Tolerances tolerances) {
        if (thicknesses.isEmpty()) {
            return List.of();
        }
        SkinFace main = skin.get(0);
        return skin.stream()
                .filter(f -> f.normal().dot(main.normal()) > Math.cos(tolerances.angle()))
                .filter(f -> {
                    double depth =
                            main.outline().get(0).subtract(f.outline().get(0)).dot(main.normal());
                    return depth > tolerances.plane() && depth < thicknesses.get(0);
                })
                .toList();
    }

    private static void add(List<Slope> slopes, Slope more, double alike) {
        for (int i = 0; i < slopes.size(); i++) {
            Slope known = slopes.get(i);
            if (Math.abs(known.pitch() - more.pitch()) < alike) {
                slopes.set(i, new Slope(known.pitch(), known.area() + more.area()));
                return;
            }
        }
        slopes.add(more);
    }
}
