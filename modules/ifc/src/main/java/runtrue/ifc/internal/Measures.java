package runtrue.ifc.internal;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import runtrue.ifc.IfcEntity;

/** Turns stated values into SI by their measure type, or by a unit of their own. */
final class Measures {
    private static final Set<String> WITHOUT_UNIT = Set.of(
            "IFCREAL",
            "IFCINTEGER",
            "IFCPOSITIVEINTEGER",
            "IFCNUMERICMEASURE",
            "IFCCOUNTMEASURE",
            "IFCRATIOMEASURE",
            "IFCPOSITIVERATIOMEASURE",
            "IFCNORMALISEDRATIOMEASURE",
            "IFCPHMEASURE",
            "IFCPARAMETERVALUE");

    private final Map<String, UnitFactor> factors;
    private final UnitReader reader;
    private final Map<String, Optional<UnitFactor>> byMeasure = new ConcurrentHashMap<>();

    Measures(Map<String, UnitFactor> factors, UnitReader reader) {
        this.factors = factors;
        this.reader = reader;
    }

    /**
     * The value in SI; empty when neither the measure nor a unit tells how to convert it.
     *
     * @param measure for example {@code IFCLENGTHMEASURE}
     * @param owner a property or quantity, whose own Unit goes before the project's
     */
    OptionalDouble toSi(double value, String measure, IfcEntity owner) {
        IfcEntity own = owner.optionalRef("Unit").orElse(null);
        if (own != null) {
            return reader.factor(own).stream()
                    .mapToDouble(factor -> factor.toSi(value))
                    .findFirst();
        }
        return byMeasure.computeIfAbsent(measure, this::find).stream()
                .mapToDouble(factor -> factor.toSi(value))
                .findFirst();
    }

    private Optional<UnitFactor> find(String measure) {
        return WITHOUT_UNIT.contains(measure)
                ? Optional.of(UnitFactor.ONE)
                : Optional.ofNullable(factors.get(unitKind(measure)));
    }

    /** IFCPOSITIVELENGTHMEASURE is given in the LENGTHUNIT, and so on: the standard names both alike. */
    private static String unitKind(String measure) {
        String kind = measure.replaceFirst("^IFC(POSITIVE|NONNEGATIVE)?", "").replaceFirst("MEASURE$", "");
        return kind + "UNIT";
    }
}
