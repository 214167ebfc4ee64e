package runtrue.roof.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcModel;
import runtrue.roof.Surround.Box;
import runtrue.step.StepFile;

/**
 * Corners of boxes around a body's parts, never too small. Openings and cuts are left out of account. Items of kinds that
 * have no simple box are looked through for points and lengths ({@link Reach}).
 */
final class Corners {
    private static final int DEEPEST = 50;

    /** Names of a parameterised section's sizes; together they are more than it measures from its position. */
    private static final List<String> SIZES = List.of(
            "XDim",
            "YDim",
            "Radius",
            "SemiAxis1",
            "SemiAxis2",
            "OverallWidth",
            "OverallDepth",
            "BottomFlangeWidth",
            "TopFlangeWidth",
            "Depth",
            "Width",
            "FlangeWidth");

    private final IfcModel model;
    private final StepFile file;
    private final Map<Integer, Optional<Box>> shared;
    private final List<Vector3D> corners = new ArrayList<>();
    private int depth;

    /** For one body; {@code shared} remembers the boxes of mapped shapes for all bodies of the model. */
    Corners(IfcModel model, Map<Integer, Optional<Box>> shared) {
        this.model = model;
        this.shared = shared;
        file = model.file();
    }

    /** What was found so far, in file units. */
    List<Vector3D> found() {
        return corners;
    }

    /** Whether the extent of all items is known; {@code to} leads from their axes to those wanted. */
    boolean addItems(IfcEntity representation, AffineTransformMatrix3D to) {
        for (IfcEntity item : representation.refs("Items")) {
            if (!add(item, to)) {
                return false;
            }
        }
        return true;
    }

    /** Whether the extent of the item is known. Items that lie this deep in each other, or in themselves, are not looked into. */
    private boolean add(IfcEntity item, AffineTransformMatrix3D to) {
        depth++;
        try {
            return depth <= DEEPEST && addKnown(item, to);
        } finally {
            depth--;
        }
    }

    private boolean addKnown(IfcEntity item, AffineTransformMatrix3D to) {
        if (item.isA("IfcMappedItem")) {
            IfcEntity map = item.ref("MappingSource");
            AffineTransformMatrix3D target = model.transform(item.ref("MappingTarget"));
            AffineTransformMatrix3D source = model.transform(map.ref("MappingOrigin"));
            return addMapped(map, to.multiply(target).multiply(source.inverse()));
        } else if (item.isA("IfcExtrudedAreaSolid")) {
            return addExtrusion(item, to);
        } else if (item.isA("IfcBooleanResult")) {
            return add(item.ref("FirstOperand"), to)
                    && (!item.enumeration("Operator").equals("UNION") || add(item.ref("SecondOperand"), to));
        } else if (item.isA("IfcCsgSolid")) {
            return add(item.ref("TreeRootExpression"), to);
        } else if (item.isA("IfcFacetedBrep")) {
            return addShell(item.ref("Outer").id(), to);
        } else if (item.isA("IfcShellBasedSurfaceModel")) {
            return item.refs("SbsmBoundary").stream().allMatch(s -> addShell(s.id(), to));
        } else if (item.isA("IfcFaceBasedSurfaceModel")) {
            return item.refs("FbsmFaces").stream().allMatch(s -> addShell(s.id(), to));
        } else if (item.isA("IfcTessellatedFaceSet")) {
            return addPoints(file.numbers(item.ref("Coordinates").id(), 0), 3, to);
        } else if (item.isA("IfcBoundingBox")) {
            return addBoundingBox(item, to);
        }
        boolean found = (item.isA("IfcRevolvedAreaSolid") && addRevolution(item, to))
                || (item.isA("IfcSweptDiskSolid") && addPipe(item, to));
        return found || addReach(item, to);
    }

    /** Not remembered while it is looked into, so that a shape mapped from itself ends at the greatest depth. */
    private boolean addMapped(IfcEntity map, AffineTransformMatrix3D to) {
        if (!shared.containsKey(map.id())) {
            Corners own = new Corners(model, shared);
            own.depth = depth;
            boolean all = own.addItems(map.ref("MappedRepresentation"), AffineTransformMatrix3D.identity());
            shared.put(map.id(), all ? Extents.boxAround(own.found()) : Optional.empty());
        }
        return shared.getOrDefault(map.id(), Optional.empty())
                .filter(box -> addBox(box.low().toArray(), box.high().toArray(), to))
                .isPresent();
    }

    private boolean addReach(IfcEntity item, AffineTransformMatrix3D to) {
        Optional<Box> reach = Reach.of(item, file);
        return reach.filter(box -> addBox(box.low().toArray(), box.high().toArray(), to))
                .isPresent();
    }

    private boolean addBoundingBox(IfcEntity box, AffineTransformMatrix3D to) {
        double[] low = Arrays.copyOf(coordinates(box.ref("Corner").id()), 3);
        double[] high = {low[0] + box.real("XDim"), low[1] + box.real("YDim"), low[2] + box.real("ZDim")};
        return addBox(low, high, to);
    }

    /** Wherever a section is turned to, it stays as far from any point of the axis as it was. */
    private boolean addRevolution(IfcEntity solid, AffineTransformMatrix3D to) {
        double[] box = section(solid.ref("SweptArea"));
        if (box.length < 4) {
            return false;
        }
        double[] centre =
                Arrays.copyOf(coordinates(solid.ref("Axis").ref("Location").id()), 3);
        AffineTransformMatrix3D from = solid.has("Position") ? to.multiply(model.transform(solid.ref("Position"))) : to;
        double reach = 0;
        for (int i = 0; i < 4; i++) {
            double across = Math.hypot(box[i & 1] - centre[0], box[2 + (i >> 1)] - centre[1]);
            reach = Math.max(reach, Math.hypot(across, centre[2]));
        }
        return addBall(centre, centre, reach, from);
    }

    /** Straight and, by three points each, round pieces of a pipe: an arc of up to a full circle stays near its points. */
    private boolean addPipe(IfcEntity pipe, AffineTransformMatrix3D to) {
        IfcEntity line = pipe.ref("Directrix");
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        double bulge = 0;
        if (line.isA("IfcPolyline")) {
            file.references(line.id(), 0, point -> stretch(low, high, Arrays.copyOf(coordinates(point), 3), 0));
        } else if (line.isA("IfcIndexedPolyCurve") && line.ref("Points").isA("IfcCartesianPointList3D")) {
            double[] rows = line.ref("Points").reals("CoordList");
            for (int i = 0; i + 2 < rows.length; i += 3) {
                stretch(low, high, rows, i);
            }
            bulge = line.has("Segments") ? high[0] - low[0] + high[1] - low[1] + high[2] - low[2] : 0;
        }
        return low[0] <= high[0] && addBall(low, high, pipe.real("Radius") + bulge, to);
    }

    private boolean addBall(double[] low, double[] high, double reach, AffineTransformMatrix3D to) {
        double[] from = {low[0] - reach, low[1] - reach, low[2] - reach};
        double[] until = {high[0] + reach, high[1] + reach, high[2] + reach};
        return addBox(from, until, to);
    }

    private boolean addExtrusion(IfcEntity solid, AffineTransformMatrix3D to) {
        double[] box = section(solid.ref("SweptArea"));
        double[] way = solid.ref("ExtrudedDirection").reals("DirectionRatios");
        if (box.length < 4 || way.length < 3) {
            return addReach(solid, to);
        }
        AffineTransformMatrix3D from = solid.has("Position") ? to.multiply(model.transform(solid.ref("Position"))) : to;
        Vector3D path = Vector3D.of(way[0], way[1], way[2]).normalize().multiply(solid.real("Depth"));
        for (int i = 0; i < 4; i++) {
            Vector3D corner = Vector3D.of(box[i & 1], box[2 + (i >> 1)], 0);
            corners.add(from.apply(corner));
            corners.add(from.apply(corner.add(path)));
        }
        return true;
    }

    /** Least and greatest x, then y; no figures when not known. */
    private double[] section(IfcEntity profile) {
        if (profile.isA("IfcArbitraryClosedProfileDef")) {
            IfcEntity curve = profile.ref("OuterCurve");
            if (curve.isA("IfcPolyline")) {
                List<double[]> points = new ArrayList<>();
                file.references(curve.id(), 0, id -> points.add(coordinates(id)));
                return box(points);
            }
            if (curve.isA("IfcIndexedPolyCurve") && !curve.has("Segments")) {
                double[] rows = curve.ref("Points").reals("CoordList");
                List<double[]> points = new ArrayList<>();
                for (int i = 0; i + 1 < rows.length; i += 2) {
                    points.add(new double[] {rows[i], rows[i + 1]});
                }
                return box(points);
            }
            return new double[0];
        }
        if (!profile.isA("IfcParameterizedProfileDef")) {
            return new double[0];
        }
        double size = 0;
        for (String name : SIZES) {
            size += Math.max(0, profile.optionalReal(name).orElse(0));
        }
        Vector3D at = profile.has("Position")
                ? model.transform(profile.ref("Position")).apply(Vector3D.ZERO)
                : Vector3D.ZERO;
        return new double[] {at.getX() - size, at.getX() + size, at.getY() - size, at.getY() + size};
    }

    private static double[] box(List<double[]> points) {
        double[] box = {
            Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (double[] p : points) {
            box[0] = Math.min(box[0], p[0]);
            box[1] = Math.max(box[1], p[0]);
            box[2] = Math.min(box[2], p[1]);
            box[3] = Math.max(box[3], p[1]);
        }
        return points.isEmpty() ? new double[0] : box;
    }

    private double[] coordinates(int point) {
        double[] found = file.numbers(point, 0);
        if (found == null || found.length < 2) {
            throw new IllegalArgumentException("a point needs coordinates");
        }
        return found;
    }

    /**
     * Faces, their bounds, their loops, their points: by places in the record, since there may be very many. Each point is
     * read once, although it is a corner of three faces or more: reading points is most of the work.
     */
    private boolean addShell(int shell, AffineTransformMatrix3D to) {
        IntStream.Builder loops = IntStream.builder();
        file.references(shell, 0, face -> file.references(face, 0, bound -> file.references(bound, 0, loops)));
        IntStream.Builder points = IntStream.builder();
        for (int loop : loops.build().toArray()) {
            if (!file.keyword(loop).equals("IFCPOLYLOOP")) {
                return addReach(model.entity(shell), to);
            }
            file.references(loop, 0, points);
        }
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        int last = -1;
        for (int point : points.build().sorted().toArray()) {
            if (point != last) {
                stretch(low, high, coordinates(point), 0);
            }
            last = point;
        }
        return addBox(low, high, to);
    }

    private boolean addPoints(double @Nullable [] rows, int width, AffineTransformMatrix3D to) {
        if (rows == null) {
            return false;
        }
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int i = 0; i + width <= rows.length; i += width) {
            stretch(low, high, rows, i);
        }
        return addBox(low, high, to);
    }

    private static void stretch(double[] low, double[] high, double[] point, int from) {
        for (int i = 0; i < 3 && from + i < point.length; i++) {
            low[i] = Math.min(low[i], point[from + i]);
            high[i] = Math.max(high[i], point[from + i]);
        }
    }

    private boolean addBox(double[] low, double[] high, AffineTransformMatrix3D to) {
        if (!(low[2] <= high[2])) {
            return false;
        }
        for (int i = 0; i < 8; i++) {
            corners.add(to.apply(Vector3D.of(
                    (i & 1) == 0 ? low[0] : high[0],
                    (i & 2) == 0 ? low[1] : high[1],
                    (i & 4) == 0 ? low[2] : high[2])));
        }
        return true;
    }
}
