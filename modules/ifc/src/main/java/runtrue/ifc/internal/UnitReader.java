package runtrue.ifc.internal;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import runtrue.ifc.IfcEntity;
import runtrue.ifc.IfcException;
import runtrue.ifc.Units;

/**
 * Units of a project, by IfcUnitAssignment. A conversion-based unit counts by its factor, whatever its name says; SI
 * prefixes on square and cubic metres belong to the metre, as in mm2.
 */
final class UnitReader {
    /** Powers of ten of IfcSIPrefix. */
    private static final Map<String, Integer> PREFIXES = Map.ofEntries(
            Map.entry("EXA", 18),
            Map.entry("PETA", 15),
            Map.entry("TERA", 12),
            Map.entry("GIGA", 9),
            Map.entry("MEGA", 6),
            Map.entry("KILO", 3),
            Map.entry("HECTO", 2),
            Map.entry("DECA", 1),
            Map.entry("DECI", -1),
            Map.entry("CENTI", -2),
            Map.entry("MILLI", -3),
            Map.entry("MICRO", -6),
            Map.entry("NANO", -9),
            Map.entry("PICO", -12),
            Map.entry("FEMTO", -15),
            Map.entry("ATTO", -18));

    private final NoteList notes;

    UnitReader(NoteList notes) {
        this.notes = notes;
    }

    /** Factors by IfcUnitEnum or IfcDerivedUnitEnum literal, for example LENGTHUNIT. */
    Map<String, UnitFactor> read(IfcEntity assignment) {
        Map<String, UnitFactor> factors = new HashMap<>();
        for (IfcEntity unit : assignment.refs("Units")) {
            String kind = unit.enumeration("UnitType");
            if (!kind.isEmpty() && !kind.equals("USERDEFINED")) {
                factor(unit).ifPresent(factor -> factors.putIfAbsent(kind, factor));
            }
        }
        return factors;
    }

    /** Factors for lengths, areas, volumes and angles, with what the file leaves out filled in and noted. */
    Units units(Map<String, UnitFactor> factors) {
        UnitFactor lengthUnit = factors.get("LENGTHUNIT");
        if (lengthUnit == null) {
            notes.add("No length unit is stated; metres are assumed.");
        }
        double length = lengthUnit == null ? 1 : lengthUnit.factor();
        if (!factors.containsKey("PLANEANGLEUNIT")) {
            notes.add("No plane angle unit is stated; radians are assumed.");
        }
        return new Units(
                length,
                factors.getOrDefault("AREAUNIT", new UnitFactor(length * length, 0))
                        .factor(),
                factors.getOrDefault("VOLUMEUNIT", new UnitFactor(length * length * length, 0))
                        .factor(),
                factors.getOrDefault("PLANEANGLEUNIT", UnitFactor.ONE).factor());
    }

    /** Factor of any unit; empty, with a note, for units that have none, such as money and context-dependent ones. */
    Optional<UnitFactor> factor(IfcEntity unit) {
        return factor(unit, new HashSet<>());
    }

    private Optional<UnitFactor> factor(IfcEntity unit, Set<Integer> seen) {
        if (!seen.add(unit.id())) {
            throw problem(unit, "is defined by itself");
        }
        if (unit.isA("IfcSIUnit")) {
            return Optional.of(siUnit(unit));
        }
        if (unit.isA("IfcConversionBasedUnit")) {
            return conversion(unit, seen);
        }
        if (unit.isA("IfcDerivedUnit")) {
            return derived(unit, seen);
        }
        if (!unit.isA("IfcMonetaryUnit")) {
            notes.add("Unit " + unit.label() + " has no stated size; values in it are not converted.");
        }
        return Optional.empty();
    }

    private static UnitFactor siUnit(IfcEntity unit) {
        String prefix = unit.enumeration("Prefix");
        Integer power = prefix.isEmpty() ? Integer.valueOf(0) : PREFIXES.get(prefix);
        if (power == null) {
            throw problem(unit, "has the unknown prefix " + prefix);
        }
        return switch (unit.enumeration("Name")) {
            case "SQUARE_METRE" -> new UnitFactor(tenTo(2 * power), 0);
            case "CUBIC_METRE" -> new UnitFactor(tenTo(3 * power), 0);
            // The SI base unit of mass is the kilogram.
            case "GRAM" -> new UnitFactor(tenTo(power - 3), 0);
            case "DEGREE_CELSIUS" -> new UnitFactor(tenTo(power), 273.15);
            default -> new UnitFactor(tenTo(power), 0);
        };
    }

    /** As literal, so that a millimetre is exactly the double nearest to 0.001. */
    private static double tenTo(int power) {
        return Double.parseDouble("1e" + power);
    }

    private Optional<UnitFactor> conversion(IfcEntity unit, Set<Integer> seen) {
        IfcEntity measure = unit.ref("ConversionFactor");
        double value = measure.real("ValueComponent");
        if (value <= 0) {
            throw problem(measure, "has the conversion factor " + value + "; it must be above 0");
        }
        OptionalDouble offset = unit.optionalReal("ConversionOffset");
        return factor(measure.ref("UnitComponent"), seen)
                .map(base -> new UnitFactor(value * base.factor(), offset.orElse(0) * base.factor() + base.offset()));
    }

    private Optional<UnitFactor> derived(IfcEntity unit, Set<Integer> seen) {
        double product = 1;
        for (IfcEntity element : unit.refs("Elements")) {
            Optional<UnitFactor> base = factor(element.ref("Unit"), new HashSet<>(seen));
            if (base.isEmpty()) {
                return Optional.empty();
            }
            product *= Math.pow(base.get().factor(), element.real("Exponent"));
        }
        return Optional.of(new UnitFactor(product, 0));
    }

    private static IfcException problem(IfcEntity entity, String what) {
        return new IfcException(entity.model().file().name() + ": unit " + entity.label() + " " + what);
    }
}
