package runtrue.roof.read;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.IfcModel;
import runtrue.roof.Surround.Box;
import runtrue.step.StepException;

/**
 * How far the products of one model extend, found without making their faces: enough to tell that something is nowhere
 * near a roof. A box is never too small: openings and cuts are left out of account, and a body of a kind that has no
 * simple box gets one that all its points and lengths together fit in. Where the body's records are broken, a bounding box
 * that the model states counts instead, its own or that of the assembly that it is a part of. Neither the placement alone
 * nor the storey bounds a body, and so they say nothing.
 */
public final class Extents {
    private static final List<String> NO_BODY =
            List.of("AXIS", "FOOTPRINT", "BOX", "ANNOTATION", "CLEARANCE", "PROFILE");

    private final IfcModel model;
    private final Vector3D origin;

    /** Boxes of shapes that many products share, in the shape's own axes, by the map's instance number. */
    private final Map<Integer, Optional<Box>> shared = new ConcurrentHashMap<>();

    /** @param origin in world metres, taken off all boxes */
    public Extents(IfcModel model, Vector3D origin) {
        this.model = model;
        this.origin = origin;
    }

    /** World metres less the origin; empty when it has no body, or one whose extent nothing tells. */
    public Optional<Box> of(IfcEntity product) {
        try {
            Optional<Box> box = body(product);
            for (IfcEntity whole = product; box.isEmpty() && whole != null; whole = assemblyOf(whole)) {
                box = stated(whole);
            }
            return box.map(this::metres);
        } catch (IfcException | StepException | IllegalStateException | IllegalArgumentException e) {
            // Whoever reads the body itself will say what is wrong with it.
            return Optional.empty();
        }
    }

    /** The assembly that a product is a part of and that has no body of its own: a box that it states holds its parts. */
    private @Nullable IfcEntity assemblyOf(IfcEntity product) {
        IfcEntity whole = model.whole(product);
        return whole != null
                        && whole.isA("IfcElementAssembly")
                        && shapes(whole).stream().allMatch(shape -> NO_BODY.contains(identifier(shape)))
                ? whole
                : null;
    }

    private static List<IfcEntity> shapes(IfcEntity product) {
        return product.optionalRef("Representation")
                .map(shape -> shape.refs("Representations"))
                .orElse(List.of());
    }

    private Optional<Box> body(IfcEntity product) {
        AffineTransformMatrix3D placement = model.placement(product);
        try {
            Corners corners = new Corners(model, shared);
            for (IfcEntity shape : shapes(product)) {
                if (!NO_BODY.contains(identifier(shape)) && !corners.addItems(shape, placement)) {
                    return Optional.empty();
                }
            }
            return boxAround(corners.found());
        } catch (IfcException | StepException | IllegalStateException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static String identifier(IfcEntity shape) {
        return shape.text("RepresentationIdentifier").toUpperCase(Locale.ROOT);
    }

    private Optional<Box> stated(IfcEntity product) {
        AffineTransformMatrix3D placement = model.placement(product);
        Corners corners = new Corners(model, shared);
        for (IfcEntity shape : shapes(product)) {
            if (identifier(shape).equals("BOX") && !corners.addItems(shape, placement)) {
                return Optional.empty();
            }
        }
        return boxAround(corners.found());
    }

    private Box metres(Box box) {
        double unit = model.units().length();
        return new Box(
                box.low().multiply(unit).subtract(origin),
                box.high().multiply(unit).subtract(origin));
    }

    /** Empty around no points. */
    static Optional<Box> boxAround(Collection<Vector3D> points) {
        double[] low = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
        double[] high = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
        for (Vector3D point : points) {
            double[] p = point.toArray();
            for (int i = 0; i < 3; i++) {
                low[i] = Math.min(low[i], p[i]);
                high[i] = Math.max(high[i], p[i]);
            }
        }
        return low[0] <= high[0] ? Optional.of(new Box(Vector3D.of(low), Vector3D.of(high))) : Optional.empty();
    }
}
