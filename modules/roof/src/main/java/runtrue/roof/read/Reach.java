package runtrue.roof.read;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.roof.Surround.Box;
import runtrue.step.StepFile;
import runtrue.step.StepInstance;
import runtrue.step.StepValue;

/**
 * A box around an item of any kind, in its own axes, from nothing but the points and lengths that its records hold.
 * Coarse, and never too small: a point of the shape is reached from the item's origin by a few steps, from position to
 * position, along an axis, around it, and none of them is longer than the farthest of all points or the greatest length
 * of its kind of record. Curves and surfaces by control points stay within those; arcs within their radius of a centre.
 */
final class Reach {
    /** Positions of solid and section, a point of the section, an axis there and back, the point it turns: six at most. */
    private static final int STEPS = 6;

    /** Steps that are multiplied, or go on without end: their points and lengths bound nothing. */
    private static final List<String> UNBOUNDED = List.of(
            "IFCHALFSPACESOLID",
            "IFCPOLYGONALBOUNDEDHALFSPACE",
            "IFCBOXEDHALFSPACE",
            "IFCPOLYNOMIALCURVE",
            "IFCCLOTHOID",
            "IFCGRADIENTCURVE",
            "IFCSEGMENTEDREFERENCECURVE",
            "IFCALIGNMENTCURVE");

    /** Angles, and parameters along curves: they are lengths only where a line counts them. */
    private static final Set<String> PARAMETERS = Set.of(
            "IFCREVOLVEDAREASOLID 3",
            "IFCTRIMMEDCURVE 1",
            "IFCTRIMMEDCURVE 2",
            "IFCSWEPTDISKSOLID 3",
            "IFCSWEPTDISKSOLID 4",
            "IFCSURFACECURVESWEPTAREASOLID 3",
            "IFCSURFACECURVESWEPTAREASOLID 4",
            "IFCFIXEDREFERENCESWEPTAREASOLID 3",
            "IFCFIXEDREFERENCESWEPTAREASOLID 4");

    private final StepFile file;
    private final Map<String, Double> lengths = new HashMap<>();
    private double farthest;
    private double unit;
    private double parameter;
    private double scale = 1;

    private Reach(StepFile file) {
        this.file = file;
    }

    /** Empty when its records bound nothing. Broken records throw what the file throws for them. */
    static Optional<Box> of(IfcEntity item, StepFile file) {
        Reach reach = new Reach(file);
        Deque<Integer> open = new ArrayDeque<>(List.of(item.id()));
        Set<Integer> seen = new HashSet<>(open);
        while (!open.isEmpty()) {
            StepInstance record = file.instance(open.remove());
            if (UNBOUNDED.contains(record.keyword()) || record.keyword().endsWith("SPIRAL")) {
                return Optional.empty();
            }
            reach.add(record);
            for (StepValue value : record.attributes()) {
                follow(value, seen, open);
            }
        }
        double radius = reach.radius();
        Vector3D corner = Vector3D.of(radius, radius, radius);
        return radius > 0 ? Optional.of(new Box(corner.negate(), corner)) : Optional.empty();
    }

    private static void follow(StepValue value, Set<Integer> seen, Deque<Integer> open) {
        if (value instanceof StepValue.Reference reference && seen.add(reference.id())) {
            open.add(reference.id());
        } else if (value instanceof StepValue.ListOf list) {
            list.items().forEach(item -> follow(item, seen, open));
        }
    }

    private void add(StepInstance record) {
        String keyword = record.keyword();
        if (keyword.startsWith("IFCCARTESIANPOINT")) {
            double[] coordinates = file.numbers(record.id(), 0);
            int width = keyword.endsWith("2D") ? 2 : keyword.endsWith("3D") ? 3 : Integer.MAX_VALUE;
            addPoints(coordinates == null ? new double[0] : coordinates, width);
        } else if (keyword.startsWith("IFCCARTESIANTRANSFORMATIONOPERATOR")) {
            record.attributes().forEach(value -> scale = Math.max(scale, greatest(value)));
        } else if (!keyword.equals("IFCDIRECTION")) {
            for (int i = 0; i < record.attributes().size(); i++) {
                double greatest = greatest(record.attributes().get(i));
                if (PARAMETERS.contains(keyword + " " + i)) {
                    parameter = Math.max(parameter, greatest);
                } else {
                    lengths.merge(keyword + " " + i, greatest, Math::max);
                }
            }
            // Along a line, a parameter counts in lengths of its vector.
            unit = keyword.equals("IFCVECTOR") ? Math.max(unit, lengths.getOrDefault("IFCVECTOR 1", 0.0)) : unit;
        }
    }

    private void addPoints(double[] rows, int width) {
        for (int i = 0; i < rows.length; i += Math.min(width, rows.length)) {
            double[] p = new double[3];
            for (int k = 0; k < Math.min(3, Math.min(width, rows.length - i)); k++) {
                p[k] = rows[i + k];
            }
            farthest = Math.max(farthest, Vector3D.of(p).norm());
        }
    }

    /** Of the numbers in a value that may be lengths; whole numbers in lists are places in other lists. */
    private static double greatest(StepValue value) {
        if (value instanceof StepValue.Real real) {
            return Math.abs(real.value());
        } else if (value instanceof StepValue.Whole whole) {
            return Math.abs((double) whole.value());
        } else if (value instanceof StepValue.Typed typed) {
            return greatest(typed.value());
        } else if (value instanceof StepValue.ListOf list) {
            return list.items().stream()
                    .filter(item -> !(item instanceof StepValue.Whole))
                    .mapToDouble(Reach::greatest)
                    .max()
                    .orElse(0);
        }
        return 0;
    }

    private double radius() {
        double sum = lengths.values().stream().mapToDouble(Double::doubleValue).sum();
        return scale * (STEPS * farthest + sum + unit * parameter);
    }
}
