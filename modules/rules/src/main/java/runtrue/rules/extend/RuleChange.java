package runtrue.rules.extend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Entry;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;
import runtrue.rules.yaml.YamlValue.Sequence;

/** Changes single keys of a rule. */
final class RuleChange {
    /** What a key puts out of force, since a rule has one or the other. */
    private static final Map<String, List<String>> INSTEAD_OF = Map.of(
            "at least", List.of("at most", "require"),
            "at most", List.of("at least", "require"),
            "measure", List.of("require"),
            "require", List.of("measure", "unit", "at least", "at most"));

    private RuleChange() {}

    static Mapping of(Mapping rule, Mapping keys) {
        Map<String, Entry> entries = new LinkedHashMap<>(rule.entries());
        keys.entries()
                .keySet()
                .forEach(key -> INSTEAD_OF.getOrDefault(key, List.of()).forEach(entries::remove));
        entries.putAll(keys.entries());
        return new Mapping(rule.place(), entries);
    }

    /** Where the rule that would have told of a cause is switched off, this one tells of it itself. */
    static Mapping withoutTellers(Mapping rule, Set<String> gone) {
        Entry conditions = rule.entries().get("not assessed when");
        if (conditions == null || gone.isEmpty()) {
            return rule;
        }
        List<YamlValue> kept = new ArrayList<>();
        for (YamlValue item : conditions.value().items()) {
            kept.add(item instanceof Mapping condition ? withoutTeller(condition, gone) : item);
        }
        Map<String, Entry> entries = new LinkedHashMap<>(rule.entries());
        entries.put(
                "not assessed when",
                new Entry(conditions.keyPlace(), new Sequence(conditions.value().place(), kept)));
        return new Mapping(rule.place(), entries);
    }

    private static Mapping withoutTeller(Mapping condition, Set<String> gone) {
        if (condition.scalar("told by").map(Scalar::text).filter(gone::contains).isEmpty()) {
            return condition;
        }
        Map<String, Entry> entries = new LinkedHashMap<>(condition.entries());
        entries.remove("told by");
        return new Mapping(condition.place(), entries);
    }
}
