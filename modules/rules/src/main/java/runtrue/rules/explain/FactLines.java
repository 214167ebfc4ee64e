package runtrue.rules.explain;

import static java.util.Map.entry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import runtrue.rules.Quantity;
import runtrue.rules.RoofSystem;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.cel.FactType;
import runtrue.rules.cel.Facts;
import runtrue.rules.units.Quantities;
import runtrue.rules.units.Unit;

/** Says facts with value, unit, meaning and evidence; meaning and evidence once, where a fact is first told. */
final class FactLines {
    /** Where facts come from that need no word of their own. */
    private static final Map<String, String> BY_GROUP = Map.ofEntries(
            entry("drop", "counted over the files of the drop"),
            entry("building", "worked out from the geometry of the roof's planes"),
            entry("plane", "worked out from the geometry of the plane's elements"),
            entry("sheet", "by the layout of sheets on the plane"),
            entry("span", "by the layout of supports under the plane"),
            entry("support", "worked out from the geometry of the support"),
            entry("obstacle", "worked out from the geometry of the element"),
            entry("penetration", "worked out from the geometry of the plane's openings"),
            entry("fixture", "worked out from the geometry of the element"),
            entry("zone", "by the layout of wind zones on the plane"),
            entry("element", "as the model has it"),
            entry("stated", "as the model has it"));

    private final Facts facts;
    private final RoofSystem system;
    private final Map<String, FactSpec> specs = new HashMap<>();
    private final Set<String> told = new HashSet<>();

    FactLines(Facts facts, RoofSystem system) {
        this.facts = facts;
        this.system = system;
        FactCatalogue.standard().all().forEach(spec -> specs.put(spec.name(), spec));
    }

    /**
     * A line for each fact.
     *
     * @param unit lengths and so on are told in, where it is of the fact's dimension
     */
    List<String> of(Collection<String> names, Optional<Unit> unit) {
        List<String> lines = new ArrayList<>();
        for (String name : names) {
            String line = name + " = " + value(name, unit);
            FactSpec spec = specs.get(name);
            lines.add(told.add(name) && spec != null ? line + ": " + spec.about() + evidence(name) : line);
        }
        return lines;
    }

    private String value(String name, Optional<Unit> unit) {
        Facts.Fact fact = facts.find(name).orElse(new Facts.Missing("is not known"));
        if (fact instanceof Facts.Known known) {
            FactSpec spec = specs.get(name);
            return known.value() instanceof Double number && spec != null && spec.type() == FactType.NUMBER
                    ? Quantities.text(new Quantity(number, unit(spec, unit).symbol()))
                    : known.value().toString();
        }
        return "unknown";
    }

    /** The value in the unit that it is usually read in. */
    static String text(String name, Facts.Known known) {
        if (known.value() instanceof Double number) {
            for (FactSpec spec : FactCatalogue.standard().all()) {
                if (spec.name().equals(name)) {
                    return Quantities.text(new Quantity(
                            number, Quantities.usualUnit(spec.dimension()).symbol()));
                }
            }
        }
        return known.value().toString();
    }

    private static Unit unit(FactSpec spec, Optional<Unit> wanted) {
        return wanted.filter(u -> u.dimension().equals(spec.dimension()))
                .orElseGet(() -> Quantities.usualUnit(spec.dimension()));
    }

    /** Where a setting stands that a fact comes from by name. */
    private String setting(String evidence) {
        return facts.find("settings." + evidence).orElse(null) instanceof Facts.Known known
                ? ", " + known.evidence()
                : "";
    }

    private String evidence(String name) {
        Facts.Fact fact = facts.find(name).orElse(new Facts.Missing("is not known"));
        if (fact instanceof Facts.Missing missing) {
            return "; it " + missing.reason();
        }
        String evidence = ((Facts.Known) fact).evidence();
        if (name.startsWith("system.")) {
            return " [" + evidence + ", " + system.file() + "]";
        }
        String group = name.substring(0, name.indexOf('.'));
        String usual = BY_GROUP.getOrDefault(group, "");
        String where = evidence.isEmpty() ? usual : evidence + setting(evidence);
        return where.isEmpty() ? "" : " [" + where + "]";
    }
}
