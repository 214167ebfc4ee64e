package runtrue.ifc.select;

import java.util.Set;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;

/** Whether an element has a body of its own. */
final class Bodies {
    /** Identifiers that the standard gives to representations other than bodies. */
    private static final Set<String> OTHERS = Set.of(
            "Annotation",
            "Axis",
            "Box",
            "Clearance",
            "CoG",
            "FootPrint",
            "Lighting",
            "Plan",
            "Profile",
            "Reference",
            "Survey");

    private Bodies() {}

    /** Whether it has none, but a material usage beside other geometry: reading it makes one of the two, or says why not. */
    static boolean followFromMaterial(IfcEntity element) {
        try {
            return element.has("Representation")
                    && element.model().materials(element).stream()
                            .anyMatch(m -> m.isA("IfcMaterialLayerSetUsage") || m.isA("IfcMaterialProfileSetUsage"));
        } catch (IfcException e) {
            return false;
        }
    }

    /** In doubt there is one: reading it will tell. */
    static boolean has(IfcEntity element) {
        try {
            IfcEntity shape = element.optionalRef("Representation").orElse(null);
            return shape != null
                    && (!shape.has("Representations")
                            || shape.refs("Representations").isEmpty()
                            || shape.refs("Representations").stream()
                                    .anyMatch(r -> !OTHERS.contains(r.text("RepresentationIdentifier"))));
        } catch (IfcException e) {
            // The one who reads the shape meets the same fault and reports it.
            return true;
        }
    }
}
