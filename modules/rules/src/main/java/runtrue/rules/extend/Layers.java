package runtrue.rules.extend;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import runtrue.rules.RuleException;
import runtrue.rules.read.Bundled;
import runtrue.rules.yaml.Place;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.SchemaCheck;
import runtrue.rules.yaml.YamlFile;
import runtrue.rules.yaml.YamlValue.Entry;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;

/** Reads a rule set's file with those that it extends, one resting on the next, and puts them together. */
public final class Layers {
    /** Keys of a drop's settings that say what is different about its rules. */
    public static final Set<String> CHANGES = Set.of("changes", "switched_off");

    private Layers() {}

    /**
     * The rule set as one text, checked against the schema but not compiled.
     *
     * @throws RuleException with one line per error, each with file, line and column
     */
    public static Layered read(RuleFile file) {
        Deque<Layer> chain = new ArrayDeque<>();
        Set<String> seen = new HashSet<>();
        Optional<RuleFile> next = Optional.of(file);
        while (next.isPresent()) {
            RuleFile at = next.get();
            seen.add(at.identity());
            Layer layer = layer(at);
            chain.addFirst(layer);
            next = layer.top().scalar("extends").map(name -> extended(at, name, seen, chain));
        }
        return together(List.copyOf(chain));
    }

    /**
     * The same, changed by what the settings of a drop say under {@code changes} and {@code switched_off}.
     *
     * @param settings the drop's file
     */
    public static Layered read(RuleFile file, YamlFile settings) {
        Layered rules = read(file);
        Problems problems = new Problems();
        Optional<Mapping> top = settings.parse(problems);
        problems.throwIfAny();
        Layer layer = new Layer(
                new RuleFile(settings, Optional.empty(), Optional.empty()), changing(rules, top.orElseThrow()));
        SchemaCheck.check(layer.top(), Bundled.schema("rule-set"), problems);
        problems.throwIfAny();
        List<Layer> chain = new ArrayList<>(rules.chain());
        chain.add(layer);
        return together(chain);
    }

    /** What settings say of rules, as the rule set that would say it. */
    private static Mapping changing(Layered rules, Mapping settings) {
        Map<String, Entry> entries = new LinkedHashMap<>();
        for (String key : List.of("rule_set", "title")) {
            Entry kept = rules.top().entries().get(key);
            if (kept != null) {
                entries.put(key, kept);
            }
        }
        Place place = settings.place();
        entries.put("version", new Entry(place, new Scalar(place, Layer.OF_SETTINGS, false, Layer.OF_SETTINGS)));
        entries.put("extends", new Entry(place, new Scalar(place, "rules.yaml", false, "rules.yaml")));
        settings.entries().forEach((key, entry) -> {
            if (CHANGES.contains(key)) {
                entries.put(key, entry);
            }
        });
        return new Mapping(place, entries);
    }

    /** Errors of one file are told before the next is read: what it extends may be among them. */
    private static Layer layer(RuleFile file) {
        Problems problems = new Problems();
        Optional<Mapping> top = file.yaml().parse(problems);
        top.ifPresent(t -> Bundled.validate(file.yaml(), t, "rule-sets", "rule-set", problems));
        problems.throwIfAny();
        return new Layer(file, top.orElseThrow());
    }

    private static RuleFile extended(RuleFile at, Scalar name, Set<String> seen, Deque<Layer> chain) {
        Problems problems = new Problems();
        Optional<RuleFile> found = at.named(name.text());
        if (found.isEmpty()) {
            problems.add(
                    name.place(),
                    "there is no rule set \"" + name.text() + "\" beside this file or among those of the program");
        } else if (seen.contains(found.get().identity())) {
            List<String> names = new ArrayList<>();
            chain.forEach(layer -> names.add(0, layer.file().yaml().name()));
            problems.add(
                    name.place(),
                    "a rule set cannot extend itself: " + String.join(" extends ", names) + " extends "
                            + found.get().yaml().name());
        }
        problems.throwIfAny();
        return found.orElseThrow();
    }

    private static Layered together(List<Layer> chain) {
        Mapping top = chain.get(0).top();
        List<SwitchedOff> off = new ArrayList<>();
        for (Layer layer : chain.subList(1, chain.size())) {
            Problems problems = new Problems();
            Extension extension = new Extension(top, layer.top(), problems);
            top = extension.applied();
            off.addAll(extension.switchedOff());
            problems.throwIfAny();
            // A change may have left out what only the whole shows to be missing.
            SchemaCheck.check(top, Bundled.schema("rule-set"), problems);
            problems.throwIfAny();
        }
        return new Layered(top, chain, off);
    }
}
