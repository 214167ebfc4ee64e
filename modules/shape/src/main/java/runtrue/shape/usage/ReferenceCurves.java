package runtrue.shape.usage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.curve.Chain;
import runtrue.shape.curve.CurveReader;
import runtrue.shape.curve.Fineness;

/**
 * The curves of one representation that is no body.
 *
 * @param label for example {@code FootPrint/Curve2D: IfcPolyline}
 */
record ReferenceCurves(String label, List<Placed> curves) {
    private static final int DEEPEST = 20;

    /**
     * A curve as drawn.
     *
     * @param chain in file units, the element's axes
     */
    record Placed(IfcEntity curve, Chain chain) {}

    /** The first representation with curves among those of the names, in the names' order. */
    static Optional<ReferenceCurves> of(IfcEntity product, List<String> identifiers, Fineness fineness) {
        List<IfcEntity> all = product.optionalRef("Representation")
                .map(shape -> shape.refs("Representations"))
                .orElse(List.of());
        for (String identifier : identifiers) {
            for (IfcEntity representation : all) {
                String name = representation.text("RepresentationIdentifier").strip();
                if (!name.equalsIgnoreCase(identifier)) {
                    continue;
                }
                List<Placed> curves = new ArrayList<>();
                collect(representation.refs("Items"), AffineTransformMatrix3D.identity(), fineness, 0, curves);
                if (!curves.isEmpty()) {
                    return Optional.of(new ReferenceCurves(label(representation, curves), curves));
                }
            }
        }
        return Optional.empty();
    }

    private static String label(IfcEntity representation, List<Placed> curves) {
        TreeSet<String> types = new TreeSet<>();
        curves.forEach(placed -> types.add(placed.curve().type()));
        return String.format(
                Locale.ROOT,
                "%s/%s: %s",
                representation.text("RepresentationIdentifier"),
                representation.text("RepresentationType"),
                String.join(", ", types));
    }

    private static void collect(
            List<IfcEntity> items, AffineTransformMatrix3D frame, Fineness fineness, int depth, List<Placed> curves) {
        if (depth > DEEPEST) {
            throw new ShapeException("The item " + items.get(0).label() + " refers to itself.");
        }
        for (IfcEntity item : items) {
            if (item.isA("IfcCurve")) {
                Chain chain = new CurveReader(fineness).read(item);
                boolean moved = !frame.equals(AffineTransformMatrix3D.identity());
                curves.add(new Placed(item, moved ? chain.moved(frame) : chain));
            } else if (item.isA("IfcGeometricSet")) {
                collect(item.refs("Elements"), frame, fineness, depth + 1, curves);
            } else if (item.isA("IfcAnnotationFillArea")) {
                collect(item.refs("OuterBoundary"), frame, fineness, depth + 1, curves);
                collect(item.refs("InnerBoundaries"), frame, fineness, depth + 1, curves);
            } else if (item.isA("IfcMappedItem")) {
                IfcEntity source = item.ref("MappingSource");
                AffineTransformMatrix3D inner = frame.multiply(item.model().transform(item.ref("MappingTarget")))
                        .multiply(item.model()
                                .transform(source.ref("MappingOrigin"))
                                .inverse());
                collect(source.ref("MappedRepresentation").refs("Items"), inner, fineness, depth + 1, curves);
            }
        }
    }
}
