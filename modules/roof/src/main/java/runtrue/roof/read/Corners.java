package runtrue.roof.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.IfcModel;
import runtrue.step.StepException;
import runtrue.step.StepFile;

/**
 * Corners of boxes around an element's body, found without making its faces: enough to tell that it is nowhere near a
 * roof. Openings and cuts are left out of account, so that the boxes are never too small. Kinds of body that have no
 * simple box are not known.
 */
final class Corners {
    private static final List<String> NO_BODY =
            List.of("AXIS", "FOOTPRINT", "BOX", "ANNOTATION", "CLEARANCE", "PROFILE");

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
    private final List<Vector3D> corners = new ArrayList<>();
    private int depth;

    private Corners(IfcModel model) {
        this.model = model;
        file = model.file();
    }

    /** World metres less the origin; empty when it has no body, or one whose extent is not known this way. */
    static Optional<List<Vector3D>> of(IfcEntity product, Vector3D origin) {
        try {
            IfcModel model = product.model();
            Corners found = new Corners(model);
            AffineTransformMatrix3D placement = model.placement(product);
            Optional<IfcEntity> shape = product.optionalRef("Representation");
            List<IfcEntity> all = shape.isPresent() ? shape.get().refs("Representations") : List.of();
            if (!found.addBodies(all, placement) && !found.addStatedBox(all, placement)) {
                return Optional.empty();
            }
            double unit = model.units().length();
            return found.corners.isEmpty()
                    ? Optional.empty()
                    : Optional.of(found.corners.stream()
                            .map(c -> c.multiply(unit).subtract(origin))
                            .toList());
        } catch (IfcException | StepException | IllegalStateException | IllegalArgumentException e) {
            // Whoever reads the body itself will say what is wrong with it.
            return Optional.empty();
        }
    }

    private boolean addBodies(List<IfcEntity> representations, AffineTransformMatrix3D to) {
        return representations.stream()
                .filter(r -> !NO_BODY.contains(identifier(r)))
                .allMatch(r -> addItems(r, to));
    }

    /** The box that the model itself states; asked only where the body is of a kind that says nothing of its extent. */
    private boolean addStatedBox(List<IfcEntity> representations, AffineTransformMatrix3D to) {
        corners.clear();
        return representations.stream().filter(r -> identifier(r).equals("BOX")).allMatch(r -> addItems(r, to))
                && !corners.isEmpty();
    }

    private static String identifier(IfcEntity representation) {
        return representation.text("RepresentationIdentifier").toUpperCase(Locale.ROOT);
    }

    private boolean addItems(IfcEntity representation, AffineTransformMatrix3D to) {
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
            return addItems(map.ref("MappedRepresentation"), to.multiply(target).multiply(source.inverse()));
        } else if (item.isA("IfcExtrudedAreaSolid")) {
            return addExtrusion(item, item.has("Position") ? to.multiply(model.transform(item.ref("Position"))) : to);
        } else if (item.isA("IfcBooleanResult")) {
            return !item.enumeration("Operator").equals("UNION") && add(item.ref("FirstOperand"), to);
        } else if (item.isA("IfcFacetedBrep")) {
            return addShell(item.ref("Outer").id(), to);
        } else if (item.isA("IfcShellBasedSurfaceModel")) {
            return item.refs("SbsmBoundary").stream().allMatch(s -> addShell(s.id(), to));
        } else if (item.isA("IfcFaceBasedSurfaceModel")) {
            return item.refs("FbsmFaces").stream().allMatch(s -> addShell(s.id(), to));
        } else if (item.isA("IfcTessellatedFaceSet")) {
            return addPoints(file.numbers(item.ref("Coordinates").id(), 0), 3, to);
        } else if (item.isA("IfcRevolvedAreaSolid")) {
            return addRevolution(item, item.has("Position") ? to.multiply(model.transform(item.ref("Position"))) : to);
        } else if (item.isA("IfcSweptDiskSolid")) {
            return addPipe(item, to);
        } else if (item.isA("IfcBoundingBox")) {
            return addBoundingBox(item, to);
        }
        return false;
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
        double reach = 0;
        for (int i = 0; i < 4; i++) {
            double across = Math.hypot(box[i & 1] - centre[0], box[2 + (i >> 1)] - centre[1]);
            reach = Math.max(reach, Math.hypot(across, centre[2]));
        }
        return addBall(centre, centre, reach, to);
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
            return false;
        }
        Vector3D path = Vector3D.of(way[0], way[1], way[2]).normalize().multiply(solid.real("Depth"));
        for (int i = 0; i < 4; i++) {
            Vector3D corner = Vector3D.of(box[i & 1], box[2 + (i >> 1)], 0);
            corners.add(to.apply(corner));
            corners.add(to.apply(corner.add(path)));
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

    /** Faces, their bounds, their loops, their points: by places in the record, since there may be very many. */
    private boolean addShell(int shell, AffineTransformMatrix3D to) {
        List<Integer> loops = new ArrayList<>();
        file.references(shell, 0, face -> file.references(face, 0, bound -> file.references(bound, 0, loops::add)));
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (int loop : loops) {
            if (!file.keyword(loop).equals("IFCPOLYLOOP")) {
                return false;
            }
            file.references(loop, 0, point -> stretch(low, high, coordinates(point), 0));
        }
        return addBox(low, high, to);
    }

    private boolean addPoints(
            double @org.jspecify.annotations.Nullable [] rows, int width, AffineTransformMatrix3D to) {
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
