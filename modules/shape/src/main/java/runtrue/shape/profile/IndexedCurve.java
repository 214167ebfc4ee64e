package runtrue.shape.profile;

import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.step.StepValue;

/** IfcIndexedPolyCurve: lines and three-point arcs over a list of points. */
final class IndexedCurve {
    private final IfcEntity curve;
    private final double chord;
    private final double[] coordinates;
    private final int dimensions;

    IndexedCurve(IfcEntity curve, double chord) {
        this.curve = curve;
        this.chord = chord;
        IfcEntity list = curve.ref("Points");
        this.coordinates = list.reals("CoordList");
        this.dimensions = list.isA("IfcCartesianPointList3D") ? 3 : 2;
    }

    double[] line() {
        Path path = new Path();
        if (curve.value("Segments") instanceof StepValue.ListOf segments) {
            for (StepValue segment : segments.items()) {
                add(segment, path);
            }
        } else {
            for (int i = 1; i <= coordinates.length / dimensions; i++) {
                double[] p = at(i);
                path.add(p[0], p[1]);
            }
        }
        return path.toArray();
    }

    private void add(StepValue segment, Path path) {
        if (!(segment instanceof StepValue.Typed typed && typed.value() instanceof StepValue.ListOf list)) {
            throw new ShapeException("A segment of " + curve.label() + " is neither a line nor an arc.");
        }
        int[] indices = list.items().stream().mapToInt(this::index).toArray();
        if (typed.keyword().equals("IFCARCINDEX")) {
            if (indices.length != 3) {
                throw new ShapeException("An arc of " + curve.label() + " does not have three points.");
            }
            Arcs.through(path, at(indices[0]), at(indices[1]), at(indices[2]), chord);
            return;
        }
        for (int index : indices) {
            double[] p = at(index);
            path.add(p[0], p[1]);
        }
    }

    private int index(StepValue value) {
        return value instanceof StepValue.Whole whole ? Math.toIntExact(whole.value()) : 0;
    }

    private double[] at(int index) {
        int i = dimensions * (index - 1);
        if (index < 1 || i + 1 >= coordinates.length) {
            throw new ShapeException(
                    "The curve " + curve.label() + " names point " + index + ", which is not in its list.");
        }
        return new double[] {coordinates[i], coordinates[i + 1]};
    }
}
