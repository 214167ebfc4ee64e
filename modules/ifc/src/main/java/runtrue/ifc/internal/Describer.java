package runtrue.ifc.internal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.Element;
import runtrue.ifc.IfcEntity;

/** Puts together what the model says of one element. */
final class Describer {
    private final StepModel model;
    private final Containment containment;
    private final PropertyReader properties;
    private final MaterialReader materials;

    Describer(StepModel model, Measures measures) {
        this.model = model;
        containment = new Containment(model);
        properties = new PropertyReader(model, measures);
        materials = new MaterialReader(model);
    }

    Element describe(IfcEntity element) {
        IfcEntity type = model.typeOf(element);
        IfcEntity whole = model.whole(element);
        IfcEntity parent = whole != null && whole.isA("IfcElement") ? whole : null;
        Containment.Place place = containment.of(element);
        return new Element(
                element.text("GlobalId"),
                model.file().name(),
                element.id(),
                element.type(),
                predefinedType(element, type),
                element.text("ObjectType"),
                element.text("Name"),
                element.text("Tag"),
                type == null ? "" : type.text("Name"),
                place.building(),
                place.storey(),
                parent == null ? "" : parent.text("GlobalId"),
                parent == null ? "" : parent.type(),
                materials.of(element, type),
                classifications(element, type),
                properties.of(element, type));
    }

    /** What the element itself says, unless that is nothing or NOTDEFINED and the type knows better. */
    static String predefinedType(IfcEntity element, @Nullable IfcEntity type) {
        String own = element.enumeration("PredefinedType");
        if (own.isEmpty()) {
            // The name of this attribute for roofs and stairs in IFC2X3.
            own = element.enumeration("ShapeType");
        }
        if (type != null && (own.isEmpty() || own.equals("NOTDEFINED"))) {
            String ofType = type.enumeration("PredefinedType");
            return ofType.isEmpty() ? own : ofType;
        }
        return own;
    }

    private List<String> classifications(IfcEntity element, @Nullable IfcEntity type) {
        Set<String> found = new LinkedHashSet<>();
        addClassifications(element, found);
        if (type != null) {
            addClassifications(type, found);
        }
        return new ArrayList<>(found);
    }

    private void addClassifications(IfcEntity object, Set<String> found) {
        for (int id : model.relations().ones(Relation.CLASSIFICATIONS, object.id())) {
            IfcEntity reference = model.entity(id);
            // ItemReference is what IFC2X3 calls the identification.
            for (String attribute : List.of("Identification", "ItemReference", "Name")) {
                String text = reference.text(attribute);
                if (!text.isEmpty()) {
                    found.add(text);
                }
            }
        }
    }
}
