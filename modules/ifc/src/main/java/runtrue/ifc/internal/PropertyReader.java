package runtrue.ifc.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.PropertyValue;
import runtrue.step.StepValue;

/** Property and quantity sets, flattened to {@code Set.Property} or {@code Set.Complex.Property}. */
final class PropertyReader {
    private static final int DEEPEST = 10;

    private static final Map<String, QuantityKind> QUANTITIES = Map.of(
            "IfcQuantityLength", new QuantityKind("LengthValue", "IFCLENGTHMEASURE", "IFCQUANTITYLENGTH"),
            "IfcQuantityArea", new QuantityKind("AreaValue", "IFCAREAMEASURE", "IFCQUANTITYAREA"),
            "IfcQuantityVolume", new QuantityKind("VolumeValue", "IFCVOLUMEMEASURE", "IFCQUANTITYVOLUME"),
            "IfcQuantityWeight", new QuantityKind("WeightValue", "IFCMASSMEASURE", "IFCQUANTITYWEIGHT"),
            "IfcQuantityCount", new QuantityKind("CountValue", "IFCCOUNTMEASURE", "IFCQUANTITYCOUNT"),
            "IfcQuantityTime", new QuantityKind("TimeValue", "IFCTIMEMEASURE", "IFCQUANTITYTIME"),
            "IfcQuantityNumber", new QuantityKind("NumberValue", "IFCNUMERICMEASURE", "IFCQUANTITYNUMBER"));

    private final StepModel model;
    private final Measures measures;

    PropertyReader(StepModel model, Measures measures) {
        this.model = model;
        this.measures = measures;
    }

    /** Own properties, then those of the type that are not already there. */
    Map<String, PropertyValue> of(IfcEntity element, @Nullable IfcEntity type) {
        Map<String, PropertyValue> found = new LinkedHashMap<>();
        readAssigned(element, false, found);
        if (type != null) {
            type.refs("HasPropertySets").forEach(set -> readSet(set, true, found));
            readAssigned(type, true, found);
        }
        return found;
    }

    private void readAssigned(IfcEntity object, boolean inherited, Map<String, PropertyValue> found) {
        for (int set : model.relations().ones(Relation.PROPERTIES, object.id())) {
            readSet(model.entity(set), inherited, found);
        }
    }

    /** A set that cannot be read is noted and costs the element no more than that set. */
    private void readSet(IfcEntity set, boolean inherited, Map<String, PropertyValue> found) {
        try {
            String prefix = set.text("Name") + ".";
            set.refs("HasProperties").forEach(property -> readProperty(property, prefix, inherited, 0, found));
            set.refs("Quantities").forEach(quantity -> readQuantity(quantity, prefix, inherited, 0, found));
        } catch (IfcException e) {
            model.note("Set " + set.label() + " is not read to its end: " + e.getMessage());
        }
    }

    private void readProperty(
            IfcEntity property, String prefix, boolean inherited, int depth, Map<String, PropertyValue> found) {
        String key = prefix + property.text("Name");
        if (property.type().equals("IfcComplexProperty")) {
            if (depth < DEEPEST) {
                property.refs("HasProperties")
                        .forEach(part -> readProperty(part, key + ".", inherited, depth + 1, found));
            }
            return;
        }
        StepValue value = valueOf(property);
        if (value instanceof StepValue.Omitted || value instanceof StepValue.Derived) {
            return;
        }
        String measure = measure(value);
        OptionalDouble number = Values.number(single(value));
        OptionalDouble si = number.isEmpty() ? number : measures.toSi(number.getAsDouble(), measure, property);
        String text = property.isA("IfcPropertyBoundedValue") ? bounds(property) : Values.text(value);
        found.putIfAbsent(key, new PropertyValue(text, si, measure, inherited));
    }

    private static StepValue valueOf(IfcEntity property) {
        return switch (property.type()) {
            case "IfcPropertyEnumeratedValue" -> property.value("EnumerationValues");
            case "IfcPropertyListValue" -> property.value("ListValues");
            case "IfcPropertyBoundedValue" -> boundedValue(property);
            case "IfcPropertyTableValue" -> property.value("DefinedValues");
            default -> property.value("NominalValue");
        };
    }

    /** The set point; where there is none, the one bound that is given. Two bounds alone are no single value. */
    private static StepValue boundedValue(IfcEntity property) {
        if (property.has("SetPointValue")) {
            return property.value("SetPointValue");
        }
        StepValue lower = property.value("LowerBoundValue");
        StepValue upper = property.value("UpperBoundValue");
        if (property.has("LowerBoundValue") && property.has("UpperBoundValue")) {
            return new StepValue.ListOf(List.of(lower, upper));
        }
        return property.has("LowerBoundValue") ? lower : upper;
    }

    private static String bounds(IfcEntity property) {
        String lower = property.text("LowerBoundValue");
        String upper = property.text("UpperBoundValue");
        String range = lower + " to " + upper;
        return property.has("SetPointValue") ? property.text("SetPointValue") + " (" + range + ")" : range;
    }

    /** A list of one item stands for that item. */
    private static StepValue single(StepValue value) {
        return value instanceof StepValue.ListOf list && list.items().size() == 1
                ? list.items().get(0)
                : value;
    }

    private static String measure(StepValue value) {
        if (value instanceof StepValue.Typed typed) {
            return typed.keyword();
        }
        boolean filled = value instanceof StepValue.ListOf list && !list.items().isEmpty();
        return filled ? measure(((StepValue.ListOf) value).items().get(0)) : "";
    }

    private void readQuantity(
            IfcEntity quantity, String prefix, boolean inherited, int depth, Map<String, PropertyValue> found) {
        String key = prefix + quantity.text("Name");
        if (quantity.type().equals("IfcPhysicalComplexQuantity")) {
            if (depth < DEEPEST) {
                quantity.refs("HasQuantities")
                        .forEach(part -> readQuantity(part, key + ".", inherited, depth + 1, found));
            }
            return;
        }
        QuantityKind kind = QUANTITIES.get(quantity.type());
        if (kind != null && quantity.has(kind.attribute)) {
            OptionalDouble si = measures.toSi(quantity.real(kind.attribute), kind.measure, quantity);
            String text = quantity.text(kind.attribute);
            found.putIfAbsent(key, new PropertyValue(text, si, kind.keyword, inherited));
        }
    }

    private record QuantityKind(String attribute, String measure, String keyword) {}
}
