package runtrue.shape.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Fineness;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.mesh.Points;
import runtrue.shape.mesh.Shells;
import runtrue.shape.profile.Profile;
import runtrue.shape.profile.Ring;
import runtrue.shape.sweep.Workshop;

/** The primitives of constructive geometry. A block starts at its corner, a pyramid about the centre of its base. */
final class Primitives {
    private final Workshop workshop;
    private final Fineness fineness;

    Primitives(Workshop workshop, Fineness fineness) {
        this.workshop = workshop;
        this.fineness = fineness;
    }

    static boolean reads(String type) {
        return switch (type) {
            case "IfcBlock", "IfcRightCircularCylinder", "IfcRightCircularCone", "IfcRectangularPyramid", "IfcSphere" ->
                true;
            default -> false;
        };
    }

    /** Blocks and cylinders carry a sweep. */
    Solid read(IfcEntity item, AffineTransformMatrix3D frame) {
        AffineTransformMatrix3D placement = ItemReader.placed(item, frame);
        return switch (item.type()) {
            case "IfcBlock" -> {
                Profile base = Profile.rectangle(item.type(), size(item, "XLength"), size(item, "YLength"));
                yield Extrusion.of(base, placement, Vector3D.of(0, 0, size(item, "ZLength")));
            }
            case "IfcRightCircularCylinder" -> {
                Profile base = Profile.circle(item.type(), size(item, "Radius"), fineness);
                yield Extrusion.of(base, placement, Vector3D.of(0, 0, size(item, "Height")));
            }
            case "IfcRightCircularCone" ->
                pointed(circle(size(item, "BottomRadius"), fineness), size(item, "Height"), placement);
            case "IfcRectangularPyramid" -> {
                double x = 0.5 * size(item, "XLength");
                double y = 0.5 * size(item, "YLength");
                yield pointed(new double[] {-x, -y, x, -y, x, y, -x, y}, size(item, "Height"), placement);
            }
            default -> sphere(size(item, "Radius"), placement);
        };
    }

    private static double size(IfcEntity item, String dimension) {
        double value = item.real(dimension);
        if (!(value > 0)) {
            throw new ShapeException("The " + dimension + " of " + item.label() + " is not positive.");
        }
        return value;
    }

    private static double[] circle(double radius, Fineness fineness) {
        Ring ring = Profile.circle("", radius, fineness).outer();
        double[] xy = new double[2 * ring.size()];
        for (int i = 0; i < ring.size(); i++) {
            xy[2 * i] = ring.x(i);
            xy[2 * i + 1] = ring.y(i);
        }
        return xy;
    }

    /** A base in the plane z = 0 and straight lines from it to a point above its origin. */
    private Solid pointed(double[] base, double height, AffineTransformMatrix3D placement) {
        int n = base.length / 2;
        workshop.budget().accept(n + 1);
        Points points = new Points(n + 1);
        List<int[][]> faces = new ArrayList<>(n + 1);
        int[] bottom = new int[n];
        for (int i = 0; i < n; i++) {
            put(points, placement, base[2 * i], base[2 * i + 1], 0);
            bottom[i] = n - 1 - i;
            faces.add(new int[][] {{i, (i + 1) % n, n}});
        }
        put(points, placement, 0, 0, height);
        faces.add(new int[][] {bottom});
        return solid(points, faces);
    }

    /**
     * Rings of quadrangles between two poles. Along and across each leave out up to half the chord tolerance, because
     * what both leave out adds up.
     */
    private Solid sphere(double radius, AffineTransformMatrix3D placement) {
        int quarter = fineness.halved().chords(radius, Math.PI / 2);
        int around = 4 * quarter;
        int rings = 2 * quarter;
        workshop.budget().accept((long) around * rings);
        Points points = new Points(around * (rings - 1) + 2);
        put(points, placement, 0, 0, -radius);
        for (int r = 1; r < rings; r++) {
            double z = -radius * Math.cos(Math.PI * r / rings);
            double out = radius * Math.sin(Math.PI * r / rings);
            for (int i = 0; i < around; i++) {
                double angle = 2 * Math.PI * i / around;
                put(points, placement, out * Math.cos(angle), out * Math.sin(angle), z);
            }
        }
        put(points, placement, 0, 0, radius);
        int top = points.size() - 1;
        List<int[][]> faces = new ArrayList<>(around * rings);
        for (int i = 0; i < around; i++) {
            int next = (i + 1) % around;
            faces.add(new int[][] {{0, 1 + next, 1 + i}});
            for (int r = 0; r + 2 < rings; r++) {
                int low = 1 + r * around;
                int high = low + around;
                faces.add(new int[][] {{low + i, low + next, high + next, high + i}});
            }
            faces.add(new int[][] {{top - around + i, top - around + next, top}});
        }
        return solid(points, faces);
    }

    private static void put(Points points, AffineTransformMatrix3D placement, double x, double y, double z) {
        points.add(placement.applyX(x, y, z), placement.applyY(x, y, z), placement.applyZ(x, y, z));
    }

    private Solid solid(Points points, List<int[][]> faces) {
        Mesh mesh = Shells.solid(points.toArray(), faces, workshop.tolerances(), workshop.remarks());
        return new Solid(mesh, Optional.empty());
    }
}
