package runtrue.rules.needs;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import runtrue.ids.IdsDocument;
import runtrue.ids.Requirement;
import runtrue.ids.Requirement.Cardinality;
import runtrue.ids.Specification;
import runtrue.rules.Rule;
import runtrue.rules.RuleException;
import runtrue.rules.RuleSet;
import runtrue.rules.Uses;
import runtrue.rules.read.Bundled;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.SchemaCheck;
import runtrue.rules.yaml.YamlFile;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;

/**
 * Says what the rules in force need from models. A file of the rules folder says what each fact rests on in a model; of that,
 * what the rules' facts rest on is asked for, and which rules these are stands beside it.
 */
public final class ModelNeeds {
    private static final List<String> ALL_VERSIONS = List.of("IFC2X3", "IFC4", "IFC4X3_ADD2");

    private final RuleSet rules;
    private final Problems problems = new Problems();

    /** Facts that each rule reads, by its title. */
    private final Map<String, Set<String>> read = new LinkedHashMap<>();

    private ModelNeeds(RuleSet rules) {
        this.rules = rules;
        for (Rule rule : rules.rules()) {
            read.put(rule.title(), Uses.facts(rule, rules));
        }
    }

    /**
     * The needs of a rule set.
     *
     * @param file what facts rest on; empty for the one that comes with the program
     * @throws RuleException when the file is wrong, or the rules read nothing from models
     */
    public static IdsDocument of(RuleSet rules, Optional<Path> file) {
        return new ModelNeeds(rules)
                .document(file.map(YamlFile::read).orElseGet(() -> Bundled.file("needs", "model-information")));
    }

    private IdsDocument document(YamlFile file) {
        Optional<Mapping> parsed = file.parse(problems);
        parsed.ifPresent(t -> SchemaCheck.check(t, Bundled.schema("model-information"), problems));
        problems.throwIfAny();
        Mapping top = parsed.orElseThrow();
        List<Specification> specifications = new ArrayList<>();
        for (YamlValue item : top.items("information")) {
            if (item instanceof Mapping mapping) {
                specification(mapping).ifPresent(specifications::add);
            }
        }
        List<String> description = new ArrayList<>(List.of(top.text("about").orElse("")));
        top.mapping("geometry")
                .filter(geometry -> !readers(FactNames.read(geometry.items("facts"), problems))
                        .isEmpty())
                .flatMap(geometry -> geometry.text("sentence"))
                .ifPresent(description::add);
        problems.throwIfAny();
        if (specifications.isEmpty()) {
            throw new RuleException("the rules of " + rules.name() + " read nothing that a model states");
        }
        return new IdsDocument(
                "What the rule set \"" + rules.title() + "\" needs from models",
                rules.name() + " " + rules.version(),
                String.join(" ", description),
                Optional.empty(),
                "Judging profiled metal roofs before ordering",
                specifications);
    }

    /** Empty where no rule reads a fact that rests on it. */
    private Optional<Specification> specification(Mapping mapping) {
        List<String> readers = readers(FactNames.read(mapping.items("facts"), problems));
        List<Requirement> requirements = new ArrayList<>();
        for (YamlValue item : mapping.items("requires")) {
            if (item instanceof Mapping requirement
                    && !readers(FactNames.read(requirement.items("facts"), problems))
                            .isEmpty()) {
                requirements.add(requirement(requirement));
            }
        }
        boolean needed = mapping.text("needed").filter("true"::equals).isPresent();
        if (readers.isEmpty() || (requirements.isEmpty() && !needed)) {
            return Optional.empty();
        }
        List<String> versions = texts(mapping, "ifc versions");
        return Optional.of(new Specification(
                mapping.text("name").orElse(""),
                versions.isEmpty() ? ALL_VERSIONS : versions,
                "For " + String.join(", ", readers) + ".",
                mapping.text("instructions").orElse(""),
                texts(mapping, "entities"),
                texts(mapping, "predefined types"),
                needed,
                requirements));
    }

    private static Requirement requirement(Mapping mapping) {
        String property = mapping.text("property").orElse("");
        int dot = property.indexOf('.');
        Requirement.Facet facet = mapping.get("attribute").isPresent()
                ? new Requirement.Attribute(mapping.text("attribute").orElse(""))
                : dot > 0
                        ? new Requirement.Property(
                                property.substring(0, dot),
                                property.substring(dot + 1),
                                mapping.text("data type").orElse(""))
                        : new Requirement.Material();
        return new Requirement(
                facet,
                Cardinality.valueOf(
                        mapping.text("cardinality").orElse("required").toUpperCase(Locale.ROOT)),
                mapping.text("instructions").orElse(""));
    }

    /** Titles of the rules that read one of the facts. */
    private List<String> readers(FactNames facts) {
        return read.entrySet().stream()
                .filter(rule -> facts.meet(rule.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    private static List<String> texts(Mapping mapping, String key) {
        return mapping.items(key).stream()
                .filter(Scalar.class::isInstance)
                .map(item -> ((Scalar) item).text())
                .toList();
    }

    /** Facts that come from models by the file of the program, but that neither an entry nor geometry stands for. */
    static Set<String> without(YamlFile file, Set<String> facts) {
        Problems problems = new Problems();
        Mapping top = file.parse(problems).orElseThrow();
        List<FactNames> names = new ArrayList<>();
        top.mapping("geometry").ifPresent(g -> names.add(FactNames.read(g.items("facts"), problems)));
        top.items("information").forEach(item -> {
            if (item instanceof Mapping mapping) {
                names.add(FactNames.read(mapping.items("facts"), problems));
            }
        });
        problems.throwIfAny();
        Set<String> left = new TreeSet<>(facts);
        left.removeIf(fact -> names.stream().anyMatch(n -> n.hold(fact)));
        return left;
    }
}
