package runtrue.shape.usage;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.Tolerances;
import runtrue.shape.solid.ItemReader;
import runtrue.shape.solid.Solid;

/**
 * The body of an element whose file draws none, made of what its material usage states: a foot print as thick as the
 * layer set, or profiles along an axis. Start with {@link #of}.
 *
 * @param label the representation and the usage, for example
 *     {@code FootPrint/Curve2D: IfcPolyline, with IfcMaterialLayerSetUsage}
 * @param solids in metres, the element's own axes
 */
public record UsageBody(String label, List<Solid> solids) {
    public UsageBody {
        solids = List.copyOf(solids);
    }

    /** The usage that a body can be made of, where the element has one. */
    public static Optional<IfcEntity> usage(IfcEntity product) {
        return product.model().materials(product).stream()
                .filter(m -> m.isA("IfcMaterialLayerSetUsage") || m.isA("IfcMaterialProfileSetUsage"))
                .findFirst();
    }

    /**
     * Makes the body.
     *
     * @param usage as {@link #usage} gives it
     * @param frame from the element's axes in file units to those in metres
     * @param remarks takes sentences on what was assumed
     * @throws ShapeException with what is missing and what to do
     */
    public static UsageBody of(
            IfcEntity product,
            IfcEntity usage,
            AffineTransformMatrix3D frame,
            Tolerances tolerances,
            Consumer<String> remarks) {
        Making making = new Making(frame, tolerances, ItemReader.fineness(tolerances, frame), remarks);
        return usage.isA("IfcMaterialLayerSetUsage")
                ? new LayeredBody(making).of(product, usage)
                : new ProfiledBody(making).of(product, usage);
    }
}
