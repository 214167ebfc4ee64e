package runtrue.shape.usage;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.IfcEntity;
import runtrue.shape.ShapeException;
import runtrue.shape.profile.Profile;
import runtrue.shape.solid.Extrusion;
import runtrue.shape.solid.Solid;

/**
 * A foot print as thick as its layer set. By the definition of IfcMaterialLayerSetUsage (ISO 16739) the base of the set
 * lies OffsetFromReferenceLine from the foot print, along +z for positive offsets whatever the sense; from there the layers
 * are laid towards +z or, for a negative DirectionSense, towards -z. Thicknesses are measured square to the foot print.
 * ReferenceExtent is the extent across the thickness, which the foot print itself gives here.
 */
final class LayeredBody {
    /** Where closed curves in the element's xy plane are looked for, best first. */
    private static final List<String> IDENTIFIERS = List.of("FootPrint", "Surface", "Profile", "Axis");

    private final Making making;

    LayeredBody(Making making) {
        this.making = making;
    }

    UsageBody of(IfcEntity product, IfcEntity usage) {
        double thickness = thickness(usage);
        String direction = usage.enumeration("LayerSetDirection");
        if (!direction.equals("AXIS3")) {
            throw new ShapeException("its layers (" + usage.label() + ") are stacked along "
                    + (direction.isEmpty() ? "no axis" : direction)
                    + ", not along AXIS3, so that no foot print can be given their thickness");
        }
        ReferenceCurves curves = ReferenceCurves.of(product, IDENTIFIERS, making.fineness())
                .orElseThrow(() -> new ShapeException("its layers (" + usage.label()
                        + ") state the thickness, but there is no FootPrint curve to lay them on"));
        double base = usage.real("OffsetFromReferenceLine");
        boolean negative = usage.enumeration("DirectionSense").equals("NEGATIVE");
        double low = negative ? base - thickness : base;
        List<Solid> solids = new ArrayList<>();
        for (FootPrint.Area area : FootPrint.areas(curves, making)) {
            AffineTransformMatrix3D placement = making.frame()
                    .multiply(AffineTransformMatrix3D.createTranslation(Vector3D.of(0, 0, area.z() + low)));
            Profile profile = area.profile();
            solids.add(Extrusion.of(profile, placement, Vector3D.of(0, 0, thickness)));
        }
        making.remarks().accept(remark(usage, thickness, base, negative));
        return new UsageBody(curves.label() + ", with " + usage.type(), solids);
    }

    private String remark(IfcEntity usage, double thickness, double base, boolean negative) {
        double unit = usage.model().units().length();
        return String.format(
                Locale.ROOT,
                "The model draws no body: assumed from its material usage %s, %.1f mm of layers %s its foot print, %s",
                usage.label(),
                1000 * unit * thickness,
                negative ? "below" : "above",
                base == 0 ? "on it" : String.format(Locale.ROOT, "%+.1f mm off it", 1000 * unit * base));
    }

    /** The sum of the layers, in file units. */
    private static double thickness(IfcEntity usage) {
        double sum = 0;
        for (IfcEntity layer : usage.ref("ForLayerSet").refs("MaterialLayers")) {
            double thickness = layer.real("LayerThickness");
            if (thickness < 0) {
                throw new ShapeException("the layer " + layer.label() + " has a negative thickness");
            }
            sum += thickness;
        }
        if (!(sum > 0)) {
            throw new ShapeException("the layers of " + usage.label() + " have no thickness");
        }
        return sum;
    }
}
