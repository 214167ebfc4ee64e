package runtrue.rules.example;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import runtrue.rules.Rule;
import runtrue.rules.RuleException;
import runtrue.rules.RuleSet;
import runtrue.rules.read.Bundled;
import runtrue.rules.read.RuleSetReader;
import runtrue.rules.yaml.NearMiss;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.SchemaCheck;
import runtrue.rules.yaml.YamlFile;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Entry;
import runtrue.rules.yaml.YamlValue.Mapping;

/**
 * Reads rule sets with their examples. These stand under a rule's key {@code examples}, or in a file of the same name in a
 * folder {@code examples} beside the rule set. Checks of models read no examples.
 */
public final class RuleBooks {
    private static final String FOLDER = "examples";

    private RuleBooks() {}

    /**
     * A rule set, with a file of examples where there is one.
     *
     * @throws RuleException with one line per error, each with file, line and column
     */
    public static RuleBook load(Path file) {
        Path examples = file.resolveSibling(FOLDER).resolve(String.valueOf(file.getFileName()));
        return read(
                YamlFile.read(file),
                Files.isRegularFile(examples) ? Optional.of(YamlFile.read(examples)) : Optional.empty());
    }

    /**
     * A rule set that comes with the program.
     *
     * @throws RuleException when there is none of that name
     */
    public static RuleBook bundled(String name) {
        return read(Bundled.file("rule-sets", name), Bundled.find("rule-sets/" + FOLDER, name));
    }

    private static RuleBook read(YamlFile file, Optional<YamlFile> apart) {
        RuleSet rules = RuleSetReader.read(file);
        Problems problems = new Problems();
        Optional<Mapping> top = file.parse(problems);
        Optional<Mapping> others = apart.flatMap(f -> f.parse(problems));
        others.ifPresent(o -> SchemaCheck.check(o, Bundled.schema("rule-examples"), problems));
        problems.throwIfAny();
        Optional<Mapping> byRule = others.flatMap(o -> o.mapping("examples"));
        byRule.ifPresent(all -> unknownRules(rules, all, problems));
        List<Example> examples = new ArrayList<>();
        List<Never> nevers = new ArrayList<>();
        for (YamlValue item : top.map(t -> t.items("rules")).orElse(List.of())) {
            if (item instanceof Mapping mapping) {
                Rule rule = mapping.text("id").flatMap(rules::rule).orElseThrow();
                ExampleReader reader = new ExampleReader(rules, rule, problems);
                mapping.mapping("examples").ifPresent(reader::read);
                byRule.flatMap(all -> all.mapping(rule.id())).ifPresent(all -> {
                    twice(rule, mapping, all, problems);
                    reader.read(all);
                });
                examples.addAll(reader.examples());
                nevers.addAll(reader.nevers());
            }
        }
        problems.throwIfAny();
        return new RuleBook(rules, examples, nevers);
    }

    private static void twice(Rule rule, Mapping inRule, Mapping apart, Problems problems) {
        Entry own = inRule.entries().get("examples");
        if (own != null) {
            problems.add(
                    apart.place(),
                    "rule \"" + rule.id() + "\" has examples already, at " + own.keyPlace()
                            + "; keep them in one place");
        }
    }

    private static void unknownRules(RuleSet rules, Mapping byRule, Problems problems) {
        TreeSet<String> ids = new TreeSet<>();
        rules.rules().forEach(rule -> ids.add(rule.id()));
        byRule.entries().forEach((id, entry) -> {
            if (!ids.contains(id)) {
                problems.add(entry.keyPlace(), "there is no rule \"" + id + "\"" + NearMiss.hint(id, ids));
            }
        });
    }
}
