package runtrue.ifc.stated;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import runtrue.ifc.Element;
import runtrue.ifc.MaterialLayer;
import runtrue.ifc.PropertyValue;
import runtrue.ifc.Units;

/**
 * Finds what an element's property sets, quantity sets and material layers say of its pitch, area, length and thickness.
 * Property sets count by the standard's names; quantities count in any set, since IFC2X3 has no fixed names for sets and
 * programs write their own. Values are converted by the factor of their unit, never by its name.
 */
public final class StatedQuantities {
    /** Where the thickness of the material layers is named as its source. */
    public static final String MATERIAL_LAYERS = "material layers";

    /** Measures that are bare numbers: they carry no unit, whatever the project assigns. */
    private static final Set<String> BARE = Set.of(
            "",
            "IFCREAL",
            "IFCINTEGER",
            "IFCNUMERICMEASURE",
            "IFCRATIOMEASURE",
            "IFCPOSITIVERATIOMEASURE",
            "IFCNORMALISEDRATIOMEASURE",
            "IFCLABEL",
            "IFCTEXT",
            "IFCIDENTIFIER");

    private StatedQuantities() {}

    /**
     * What is stated of a roof element, in the order of the file.
     *
     * @param units of the element's file
     */
    public static List<StatedQuantity> ofRoof(Element element, Units units) {
        List<StatedQuantity> found = new ArrayList<>();
        element.properties()
                .forEach((key, value) -> ofRoof(key, value)
                        .flatMap(named -> quantity(key, value, named, units))
                        .ifPresent(found::add));
        layers(element.layers()).ifPresent(found::add);
        return found;
    }

    /** What is stated of a member, in the order of the file. */
    public static List<StatedQuantity> ofMember(Element element, Units units) {
        List<StatedQuantity> found = new ArrayList<>();
        element.properties()
                .forEach((key, value) -> ofMember(key, value)
                        .flatMap(named -> quantity(key, value, named, units))
                        .ifPresent(found::add));
        return found;
    }

    private record Named(StatedKind kind, AreaMeaning meaning) {
        static Optional<Named> of(StatedKind kind) {
            return Optional.of(new Named(kind, AreaMeaning.NONE));
        }

        static Optional<Named> area(AreaMeaning meaning) {
            return Optional.of(new Named(StatedKind.AREA, meaning));
        }
    }

    private static Optional<Named> ofRoof(String key, PropertyValue value) {
        String name = name(key);
        return switch (value.measure()) {
            case "IFCQUANTITYAREA" -> areaQuantity(name);
            case "IFCQUANTITYLENGTH" -> thicknessQuantity(name);
            default ->
                switch (set(key) + "." + name) {
                    case "pset_roofcommon.totalarea" -> Named.area(AreaMeaning.TOTAL);
                    case "pset_roofcommon.projectedarea" -> Named.area(AreaMeaning.PLAN);
                    case "pset_coveringcommon.totalthickness", "pset_coveringcommon.thickness" ->
                        Named.of(StatedKind.THICKNESS);
                    default -> name.equals("pitchangle") ? Named.of(StatedKind.PITCH) : Optional.empty();
                };
        };
    }

    private static Optional<Named> areaQuantity(String name) {
        return switch (name) {
            case "grossarea" -> Named.area(AreaMeaning.GROSS);
            case "netarea" -> Named.area(AreaMeaning.NET);
            case "totalarea" -> Named.area(AreaMeaning.TOTAL);
            case "projectedarea" -> Named.area(AreaMeaning.PLAN);
            case "area" -> Named.area(AreaMeaning.UNSAID);
            default -> Optional.empty();
        };
    }

    /** The standard calls a slab's and a covering's thickness its width. */
    private static Optional<Named> thicknessQuantity(String name) {
        return switch (name) {
            case "width", "nominalwidth", "thickness", "totalthickness" -> Named.of(StatedKind.THICKNESS);
            default -> Optional.empty();
        };
    }

    private static Optional<Named> ofMember(String key, PropertyValue value) {
        String name = name(key);
        if (value.measure().equals("IFCQUANTITYLENGTH")) {
            return name.equals("length") ? Named.of(StatedKind.LENGTH) : Optional.empty();
        }
        boolean slope = name.equals("slope")
                && Set.of("pset_membercommon", "pset_beamcommon").contains(set(key));
        return slope || name.equals("pitchangle") ? Named.of(StatedKind.PITCH) : Optional.empty();
    }

    private static String set(String key) {
        return key.substring(0, Math.max(0, key.lastIndexOf('.'))).strip().toLowerCase(Locale.ROOT);
    }

    private static String name(String key) {
        return key.substring(key.lastIndexOf('.') + 1).replaceAll("[\\s_]", "").toLowerCase(Locale.ROOT);
    }

    /** Empty when there is no number in it. */
    private static Optional<StatedQuantity> quantity(String key, PropertyValue value, Named named, Units units) {
        OptionalDouble raw = number(value.text());
        boolean bare = BARE.contains(value.measure());
        boolean unitStated = !bare && value.number().isPresent();
        if (raw.isEmpty() && value.number().isEmpty()) {
            return Optional.empty();
        }
        double written = raw.isPresent() ? raw.getAsDouble() : value.number().getAsDouble();
        double si = unitStated ? value.number().getAsDouble() : written * factor(named.kind(), units);
        return Optional.of(
                new StatedQuantity(named.kind(), named.meaning(), key, si, written, unitStated, value.inherited()));
    }

    private static double factor(StatedKind kind, Units units) {
        return switch (kind) {
            case PITCH -> units.planeAngle();
            case AREA -> units.area();
            case LENGTH, THICKNESS -> units.length();
        };
    }

    private static OptionalDouble number(String text) {
        try {
            double number = Double.parseDouble(text.strip());
            return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }

    /** All layers together; nothing when one of them has no thickness. */
    private static Optional<StatedQuantity> layers(List<MaterialLayer> layers) {
        if (layers.isEmpty() || layers.stream().anyMatch(l -> l.thickness().isEmpty())) {
            return Optional.empty();
        }
        double sum = layers.stream().mapToDouble(l -> l.thickness().orElse(0)).sum();
        return Optional.of(
                new StatedQuantity(StatedKind.THICKNESS, AreaMeaning.NONE, MATERIAL_LAYERS, sum, sum, true, false));
    }
}
