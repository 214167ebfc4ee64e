package runtrue.shape.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.Tolerances;
import runtrue.shape.mesh.Loops;
import runtrue.shape.mesh.Mesh;
import runtrue.shape.mesh.Shells;
import runtrue.step.StepValue;

/** IfcTriangulatedFaceSet and IfcPolygonalFaceSet: faces by index into a list of coordinates. */
final class FaceSets {
    private final FaceBudget budget;
    private final Tolerances tolerances;
    private final Consumer<String> remarks;

    FaceSets(FaceBudget budget, Tolerances tolerances, Consumer<String> remarks) {
        this.budget = budget;
        this.tolerances = tolerances;
        this.remarks = remarks;
    }

    Mesh read(IfcEntity item, AffineTransformMatrix3D frame) {
        double[] xyz = moved(item.ref("Coordinates").reals("CoordList"), frame);
        Indices indices = new Indices(item, item.reals("PnIndex"), xyz.length / 3);
        List<int[][]> faces =
                item.type().equals("IfcPolygonalFaceSet") ? polygons(item, indices) : triangles(item, indices);
        if (frame.determinant() < 0) {
            faces.replaceAll(Loops::turned);
        }
        return Shells.solid(xyz, faces, tolerances, remarks);
    }

    private static double[] moved(double[] file, AffineTransformMatrix3D frame) {
        double[] xyz = new double[file.length - file.length % 3];
        for (int i = 0; i < xyz.length; i += 3) {
            xyz[i] = frame.applyX(file[i], file[i + 1], file[i + 2]);
            xyz[i + 1] = frame.applyY(file[i], file[i + 1], file[i + 2]);
            xyz[i + 2] = frame.applyZ(file[i], file[i + 1], file[i + 2]);
        }
        return xyz;
    }

    private List<int[][]> triangles(IfcEntity item, Indices indices) {
        double[] corners = item.reals("CoordIndex");
        budget.take(corners.length / 3);
        List<int[][]> faces = new ArrayList<>(corners.length / 3);
        for (int i = 0; i + 2 < corners.length; i += 3) {
            faces.add(new int[][] {
                {indices.point(corners[i]), indices.point(corners[i + 1]), indices.point(corners[i + 2])}
            });
        }
        return faces;
    }

    private List<int[][]> polygons(IfcEntity item, Indices indices) {
        List<IfcEntity> members = item.refs("Faces");
        budget.take(members.size());
        List<int[][]> faces = new ArrayList<>(members.size());
        for (IfcEntity face : members) {
            List<int[]> loops = new ArrayList<>(1);
            loops.add(indices.loop(face.reals("CoordIndex")));
            if (face.value("InnerCoordIndices") instanceof StepValue.ListOf inner) {
                for (StepValue hole : inner.items()) {
                    loops.add(indices.loop(numbers(hole)));
                }
            }
            faces.add(loops.toArray(new int[0][]));
        }
        return faces;
    }

    private static double[] numbers(StepValue value) {
        return value instanceof StepValue.ListOf list
                ? list.items().stream()
                        .mapToDouble(item -> item instanceof StepValue.Whole whole ? whole.value() : 0)
                        .toArray()
                : new double[0];
    }

    /** From the file's indices, counted from 1 and perhaps led through PnIndex, to points. */
    private static final class Indices {
        private final IfcEntity item;
        private final double[] through;
        private final int points;

        Indices(IfcEntity item, double[] through, int points) {
            this.item = item;
            this.through = through;
            this.points = points;
        }

        int point(double index) {
            int i = (int) index;
            if (through.length > 0) {
                check(i, through.length);
                i = (int) through[i - 1];
            }
            check(i, points);
            return i - 1;
        }

        int[] loop(double[] indices) {
            int[] loop = new int[indices.length];
            for (int i = 0; i < loop.length; i++) {
                loop[i] = point(indices[i]);
            }
            return loop;
        }

        private void check(int index, int size) {
            if (index < 1 || index > size) {
                throw new ShapeException(
                        "The face set " + item.label() + " names point " + index + " of a list of " + size + ".");
            }
        }
    }
}
