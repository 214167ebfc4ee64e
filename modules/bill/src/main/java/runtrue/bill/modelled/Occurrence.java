package runtrue.bill.modelled;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.geometry.euclidean.threed.AffineTransformMatrix3D;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import runtrue.ifc.Element;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.IfcModel;
import runtrue.ifc.PropertyValue;
import runtrue.roof.read.Extents;

/**
 * One modelled fastener, accessory or sheet, which may stand for several alike.
 *
 * @param places of the things, metres, moved by the drop origin; one for all where only one is known, none where none is
 * @param count of things
 */
record Occurrence(Element element, List<Vector3D> places, long count, How how) {
    private static final Set<String> COUNTS = Set.of("count", "quantity", "number", "numberofitems", "pieces");

    /** How an occurrence was counted. */
    enum How {
        STATED("by the count that it states"),
        MAPPED("by its mapped items"),
        ONE("one each");

        private final String label;

        How(String label) {
            this.label = label;
        }

        String label() {
            return label;
        }
    }

    static Occurrence of(IfcEntity entity, Extents extents, Vector3D origin) {
        Element element = entity.model().describe(entity);
        List<Vector3D> mapped = mapped(entity, origin);
        List<Vector3D> middle = extents.of(entity)
                .map(box -> List.of(box.low().add(box.high()).multiply(0.5)))
                .orElse(List.of());
        OptionalLong stated = stated(element);
        if (stated.isPresent()) {
            boolean each = mapped.size() == stated.getAsLong();
            return new Occurrence(element, each ? mapped : middle, stated.getAsLong(), How.STATED);
        }
        return mapped.size() > 1
                ? new Occurrence(element, mapped, mapped.size(), How.MAPPED)
                : new Occurrence(element, middle, 1, How.ONE);
    }

    /** A count of its own, above 0, in any quantity or property set; that of a type says nothing of this occurrence. */
    private static OptionalLong stated(Element element) {
        return element.properties().entrySet().stream()
                .filter(e -> !e.getValue().inherited() && isCount(e))
                .flatMap(e -> number(e.getValue().text()).stream())
                .mapToLong(n -> n)
                .findFirst();
    }

    private static boolean isCount(Map.Entry<String, PropertyValue> property) {
        String key = property.getKey();
        String name =
                key.substring(key.lastIndexOf('.') + 1).replaceAll("[\\s_]", "").toLowerCase(Locale.ROOT);
        return COUNTS.contains(name);
    }

    private static Optional<Long> number(String text) {
        try {
            double number = Double.parseDouble(text.strip());
            return number >= 1 && number == Math.rint(number) && number < 1e9
                    ? Optional.of((long) number)
                    : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** Where the mapped items of its body stand; none when it has no such items or their places cannot be read. */
    private static List<Vector3D> mapped(IfcEntity entity, Vector3D origin) {
        try {
            IfcModel model = entity.model();
            AffineTransformMatrix3D placement = model.placement(entity);
            return entity.optionalRef("Representation").stream()
                    .flatMap(shape -> shape.refs("Representations").stream())
                    .filter(r -> r.text("RepresentationIdentifier").equals("Body"))
                    .flatMap(r -> r.refs("Items").stream())
                    .filter(item -> item.isA("IfcMappedItem"))
                    .map(item -> placement.apply(
                            model.transform(item.ref("MappingTarget")).apply(Vector3D.ZERO)))
                    .map(at -> at.multiply(model.units().length()).subtract(origin))
                    .toList();
        } catch (IfcException e) {
            return List.of();
        }
    }

    /** What it is called: by its predefined type where that says something, by its type, else by its own name. */
    String kind() {
        String predefined = element.predefinedType();
        boolean says =
                !predefined.isEmpty() && !Set.of("NOTDEFINED", "USERDEFINED").contains(predefined);
        return Stream.of(says ? predefined : "", element.typeName(), element.objectType(), element.name())
                .filter(text -> !text.isBlank())
                .limit(says ? 2 : 1)
                .reduce((a, b) -> a + ", " + b)
                .orElse("not named");
    }
}
