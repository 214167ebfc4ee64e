package runtrue.geometryserver;

import java.util.Locale;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.shape.Shape;
import runtrue.shape.Tolerances;
import runtrue.shape.TriangleBody;

/** Shapes from the program's meshes: file units to metres, own axes to the world's less the origin. */
final class MeshShape {
    /** Distance between neighbouring 32-bit floats, relative to their size: 2 to the power of -23. */
    private static final double FLOAT = 0x1p-23;

    /** Two engines that multiply a chain of placements in floats and in doubles agree to this, relative to its size. */
    private static final double SAME_PLACEMENT = 1e-5;

    private final Tolerances tolerances;
    private final Vector3D origin;
    private final String engine;

    MeshShape(Tolerances tolerances, Vector3D origin, String engine) {
        this.tolerances = tolerances;
        this.origin = origin;
        this.engine = engine;
    }

    /** A body, or unread with a clause that follows the engine's name as the reason. */
    Shape of(ProgramMesh mesh, IfcEntity product, String representation) {
        try {
            double unit = product.model().units().length();
            Placed placed = placed(mesh, product);
            double step = FLOAT * unit * Math.max(greatest(mesh.xyz()), placed.roughAt());
            if (!(step <= tolerances.plane())) {
                return new Shape.Unread(
                        String.format(
                                Locale.ROOT,
                                "gave it in coordinates that are 32-bit floats, %.1f mm apart at that distance",
                                1000 * step),
                        representation);
            }
            AffineTransformMatrix3D world = AffineTransformMatrix3D.createScale(unit)
                    .multiply(placed.matrix())
                    .multiply(AffineTransformMatrix3D.createScale(1 / unit))
                    .translate(origin.negate());
            return TriangleBody.of(
                    metres(mesh.xyz(), unit), mesh.corners(), world, welding(4 * step), engine, representation);
        } catch (IfcException | IllegalArgumentException | ArithmeticException | IndexOutOfBoundsException e) {
            return new Shape.Unread("gave it in a way that makes no body: " + e.getMessage(), representation);
        }
    }

    /**
     * Own axes to the world's in file units.
     *
     * @param roughAt size of those coordinates in it that are floats
     */
    private record Placed(AffineTransformMatrix3D matrix, double roughAt) {}

    /** Our own placement where it is the same, because it keeps all digits; the program moves mapped shapes further. */
    private static Placed placed(ProgramMesh mesh, IfcEntity product) {
        double[] m = mesh.matrix();
        AffineTransformMatrix3D theirs =
                AffineTransformMatrix3D.of(m[0], m[4], m[8], m[12], m[1], m[5], m[9], m[13], m[2], m[6], m[10], m[14]);
        AffineTransformMatrix3D ours = product.model().placement(product);
        double reach = Math.max(1, greatest(mesh.xyz()));
        double far = ours.apply(Vector3D.ZERO).norm();
        boolean same = true;
        for (Vector3D corner : new Vector3D[] {
            Vector3D.ZERO, Vector3D.of(reach, 0, 0), Vector3D.of(0, reach, 0), Vector3D.of(0, 0, reach)
        }) {
            same &= ours.apply(corner).distance(theirs.apply(corner)) <= SAME_PLACEMENT * (reach + far);
        }
        return same
                ? new Placed(ours, 0)
                : new Placed(theirs, theirs.apply(Vector3D.ZERO).norm());
    }

    private static double greatest(float[] xyz) {
        double greatest = 0;
        for (float c : xyz) {
            greatest = Math.max(greatest, Math.abs(c));
        }
        return greatest;
    }

    private static double[] metres(float[] xyz, double unit) {
        double[] metres = new double[xyz.length];
        for (int i = 0; i < xyz.length; i++) {
            metres[i] = xyz[i] * unit;
        }
        return metres;
    }

    /** Points of different faces that were one before they were rounded to floats must become one again. */
    private Tolerances welding(double point) {
        Tolerances t = tolerances;
        return new Tolerances(
                Math.max(t.point(), point),
                t.plane(),
                t.angle(),
                t.joint(),
                t.edge(),
                t.chord(),
                t.round(),
                t.sliver());
    }
}
