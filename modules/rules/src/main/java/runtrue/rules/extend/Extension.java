package runtrue.rules.extend;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import runtrue.rules.yaml.NearMiss;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Entry;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;
import runtrue.rules.yaml.YamlValue.Sequence;

/** Lays one rule set upon the one that it extends. What it changes has to be there, what it adds must not be. */
final class Extension {
    /** Keys that say how the two go together, and are no part of the outcome. */
    private static final Set<String> HOW = Set.of("extends", "changes", "switched_off");

    private final Mapping base;
    private final Mapping own;
    private final Mapping changes;
    private final Problems problems;
    private final List<SwitchedOff> off = new ArrayList<>();

    Extension(Mapping base, Mapping own, Problems problems) {
        this.base = base;
        this.own = own;
        this.problems = problems;
        this.changes = own.mapping("changes").orElse(new Mapping(own.place(), Map.of()));
    }

    /** Rules of the base that are not in {@link #applied()}. */
    List<SwitchedOff> switchedOff() {
        return off;
    }

    Mapping applied() {
        Map<String, Entry> entries = new LinkedHashMap<>(base.entries());
        own.entries().forEach((key, entry) -> {
            if (!HOW.contains(key)) {
                entries.put(key, entry);
            }
        });
        edgeZone(entries);
        named("definition", "definitions", entries);
        named("table", "tables", entries);
        rules(entries);
        return new Mapping(own.place(), entries);
    }

    private void edgeZone(Map<String, Entry> entries) {
        Entry stated = base.entries().get("edge_zone");
        Entry added = own.entries().get("edge_zone");
        Entry change = changes.entries().get("edge_zone");
        if (stated != null && added != null) {
            problems.add(added.keyPlace(), alreadyThere("an edge_zone", stated));
        } else if (stated == null && change != null) {
            problems.add(change.keyPlace(), "there is no edge_zone to change; state it beside rules");
        } else if (stated != null && change != null) {
            entries.put("edge_zone", changed(stated, change));
        }
    }

    /** Definitions or tables: those of the base in their order, each with its changes, and then what is added. */
    private void named(String what, String key, Map<String, Entry> entries) {
        Map<String, Entry> all =
                new LinkedHashMap<>(base.mapping(key).map(Mapping::entries).orElse(Map.of()));
        Optional<Mapping> changed = changes.mapping(key);
        Optional<Mapping> added = own.mapping(key);
        Set<String> known = new TreeSet<>(all.keySet());
        changed.ifPresent(names -> names.entries().forEach((name, change) -> {
            Entry stated = all.get(name);
            if (stated == null) {
                problems.add(
                        change.keyPlace(),
                        "there is no " + what + " \"" + name + "\" to change" + NearMiss.hint(name, known));
            } else {
                all.put(name, changed(stated, change));
            }
        }));
        added.ifPresent(names -> names.entries().forEach((name, entry) -> {
            Entry stated = all.putIfAbsent(name, entry);
            if (stated != null) {
                problems.add(entry.keyPlace(), alreadyThere("a " + what + " \"" + name + "\"", stated));
            }
        }));
        if (!all.isEmpty()) {
            Mapping place = base.mapping(key).or(() -> added).orElse(own);
            entries.put(key, new Entry(place.place(), new Mapping(place.place(), all)));
        }
    }

    private static String alreadyThere(String what, Entry stated) {
        return "there is " + what + " already, at " + stated.keyPlace() + "; to change it, put it under changes";
    }

    private void rules(Map<String, Entry> entries) {
        Map<String, Mapping> byId = new LinkedHashMap<>();
        for (YamlValue rule : base.items("rules")) {
            if (rule instanceof Mapping mapping) {
                byId.put(mapping.text("id").orElse(""), mapping);
            }
        }
        Set<String> known = new TreeSet<>(byId.keySet());
        switchOff(byId, known);
        changes.mapping("rules")
                .ifPresent(ids -> ids.entries().forEach((id, change) -> {
                    Mapping stated = byId.get(id);
                    if (stated != null && change.value() instanceof Mapping keys) {
                        byId.put(id, RuleChange.of(stated, keys));
                    } else if (stated == null) {
                        String why = known.contains(id)
                                ? " to change: it is switched off"
                                : " to change" + NearMiss.hint(id, known);
                        problems.add(change.keyPlace(), "there is no rule \"" + id + "\"" + why);
                    }
                }));
        List<YamlValue> all = new ArrayList<>(byId.values());
        for (YamlValue rule : own.items("rules")) {
            added(rule, known);
            all.add(rule);
        }
        entries.put("rules", new Entry(own.place(), new Sequence(own.place(), all)));
    }

    private void added(YamlValue rule, Set<String> known) {
        if (rule instanceof Mapping mapping) {
            mapping.scalar("id")
                    .filter(id -> known.contains(id.text()))
                    .ifPresent(id -> problems.add(
                            id.place(),
                            "the extended rule set has a rule \"" + id.text()
                                    + "\"; to change it, put its keys under changes, rules"));
        }
    }

    private void switchOff(Map<String, Mapping> byId, Set<String> known) {
        own.mapping("switched_off")
                .ifPresent(ids -> ids.entries().forEach((id, entry) -> {
                    Mapping rule = byId.remove(id);
                    if (rule == null) {
                        problems.add(
                                entry.keyPlace(),
                                "there is no rule \"" + id + "\" to switch off" + NearMiss.hint(id, known));
                    } else if (entry.value() instanceof Scalar because) {
                        off.add(new SwitchedOff(id, rule.text("title").orElse(""), because.text(), entry.keyPlace()));
                    }
                }));
        Set<String> gone = new TreeSet<>();
        off.forEach(s -> gone.add(s.rule()));
        byId.replaceAll((id, rule) -> RuleChange.withoutTellers(rule, gone));
    }

    /** Keys one by one; a table that states its axes stands for itself, since values belong to axes. */
    private static Entry changed(Entry stated, Entry change) {
        if (stated.value() instanceof Mapping before
                && change.value() instanceof Mapping after
                && !after.entries().containsKey("axes")) {
            Map<String, Entry> keys = new LinkedHashMap<>(before.entries());
            keys.putAll(after.entries());
            return new Entry(stated.keyPlace(), new Mapping(after.place(), keys));
        }
        return change;
    }
}
