package runtrue.rules.example;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import runtrue.rules.Rule;
import runtrue.rules.RuleException;
import runtrue.rules.RuleSet;
import runtrue.rules.extend.Layer;
import runtrue.rules.extend.Layered;
import runtrue.rules.extend.Layers;
import runtrue.rules.extend.RuleFile;
import runtrue.rules.read.Bundled;
import runtrue.rules.read.RuleSetReader;
import runtrue.rules.yaml.NearMiss;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.SchemaCheck;
import runtrue.rules.yaml.YamlFile;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Mapping;

/**
 * Reads rule sets with their examples. These stand under a rule's key {@code examples}, or in a file of the same name in a
 * folder {@code examples} beside the rule set. Those that a rule set gives for a rule of one that it extends stand in for that
 * one's own. Checks of models read no examples.
 */
public final class RuleBooks {
    private final Layered layered;
    private final RuleSet rules;
    private final Problems problems = new Problems();
    private final Map<String, Mapping> byRule = new LinkedHashMap<>();

    private RuleBooks(Layered layered) {
        this.layered = layered;
        this.rules = RuleSetReader.read(layered);
    }

    /**
     * A rule set with its examples.
     *
     * @throws RuleException with one line per error, each with file, line and column
     */
    public static RuleBook load(Path file) {
        return read(RuleFile.of(file, Optional.empty()));
    }

    /**
     * A rule set that comes with the program.
     *
     * @throws RuleException when there is none of that name
     */
    public static RuleBook bundled(String name) {
        return read(RuleFile.bundled(name));
    }

    /** A rule set by its file. */
    public static RuleBook read(RuleFile file) {
        return new RuleBooks(Layers.read(file)).book();
    }

    /** The same, changed by what the settings of a drop say of it. */
    public static RuleBook read(RuleFile file, Optional<Path> settings) {
        return settings.map(s -> new RuleBooks(Layers.read(file, YamlFile.read(s))).book())
                .orElseGet(() -> read(file));
    }

    private RuleBook book() {
        layered.chain().forEach(this::layer);
        List<Example> examples = new ArrayList<>();
        List<Never> nevers = new ArrayList<>();
        for (Rule rule : rules.rules()) {
            Mapping given = byRule.get(rule.id());
            if (given != null) {
                ExampleReader reader = new ExampleReader(rules, rule, problems);
                reader.read(given);
                examples.addAll(reader.examples());
                nevers.addAll(reader.nevers());
            }
        }
        problems.throwIfAny();
        return new RuleBook(rules, examples, nevers);
    }

    private void layer(Layer layer) {
        Map<String, Mapping> own = new LinkedHashMap<>();
        for (YamlValue item : layer.top().items("rules")) {
            if (item instanceof Mapping rule) {
                rule.mapping("examples").ifPresent(e -> own.put(rule.text("id").orElse(""), e));
            }
        }
        layer.top()
                .mapping("changes")
                .flatMap(c -> c.mapping("rules"))
                .ifPresent(ids -> ids.entries()
                        .keySet()
                        .forEach(id -> ids.mapping(id)
                                .flatMap(c -> c.mapping("examples"))
                                .ifPresent(e -> own.put(id, e))));
        apart(layer)
                .ifPresent(others -> others.entries().forEach((id, entry) -> {
                    Mapping already = own.get(id);
                    if (already != null) {
                        problems.add(
                                entry.keyPlace(),
                                "rule \"" + id + "\" has examples already, at " + already.place()
                                        + "; keep them in one place");
                    } else if (entry.value() instanceof Mapping examples) {
                        own.put(id, examples);
                    }
                }));
        byRule.putAll(own);
    }

    /** Those in a file of their own, by rule. */
    private Optional<Mapping> apart(Layer layer) {
        Optional<Mapping> top = layer.file().examples().flatMap(file -> file.parse(problems));
        top.ifPresent(t -> SchemaCheck.check(t, Bundled.schema("rule-examples"), problems));
        problems.throwIfAny();
        Optional<Mapping> others = top.flatMap(t -> t.mapping("examples"));
        others.ifPresent(this::unknownRules);
        return others;
    }

    /** Rules that were switched off keep their examples in the file of the rule set that has them. */
    private void unknownRules(Mapping others) {
        TreeSet<String> ids = new TreeSet<>();
        rules.rules().forEach(rule -> ids.add(rule.id()));
        rules.sources().switchedOff().forEach(off -> ids.add(off.rule()));
        others.entries().forEach((id, entry) -> {
            if (!ids.contains(id)) {
                problems.add(entry.keyPlace(), "there is no rule \"" + id + "\"" + NearMiss.hint(id, ids));
            }
        });
    }
}
