package runtrue.rules.read;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.regex.PatternSyntaxException;
import runtrue.roof.SetOut;
import runtrue.rules.DropSettings;
import runtrue.rules.Quantity;
import runtrue.rules.SelectorSettings;
import runtrue.rules.SelectorSettings.Selector;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.cel.FactType;
import runtrue.rules.extend.Layers;
import runtrue.rules.units.Dimension;
import runtrue.rules.wind.WindSetting;
import runtrue.rules.yaml.NearMiss;
import runtrue.rules.yaml.Place;
import runtrue.rules.yaml.Problems;
import runtrue.rules.yaml.YamlFile;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;

/** Reads settings in layers; a name stated in a later layer replaces the earlier one. */
public final class SettingsReader {
    private static final String COMMAND_LINE = "command line";
    private static final String RULE_SET = "rule_set";

    /** Texts that are one of a few, as the schema lists them; the command line is not checked against that. */
    private static final Map<String, List<String>> CHOICES = Map.of(
            "fixed_point", List.of("ridge", "eave", "middle"),
            "wind.standard", WindSetting.STANDARDS,
            "wind.exposure", List.of("B", "C", "D"),
            "wind.enclosure", WindSetting.ENCLOSURES,
            "wind.form", WindSetting.FORMS);

    private final Problems problems = new Problems();
    private final Map<String, FactSpec> known = FactCatalogue.standard().group("settings");
    private final Map<String, Scalar> stated = new LinkedHashMap<>();
    private final Map<String, String> origins = new HashMap<>();
    private SelectorSettings selectors = SelectorSettings.NONE;
    private boolean changesRules;

    private SettingsReader() {}

    /** Settings from files, first the weakest, and the command line, or an exception with everything that is wrong. */
    public static DropSettings read(List<YamlFile> files, Map<String, String> commandLine, String dropFile) {
        SettingsReader reader = new SettingsReader();
        for (YamlFile file : files) {
            file.parse(reader.problems).ifPresent(top -> reader.layer(file, top));
        }
        commandLine.forEach(reader::override);
        DropSettings settings = reader.settings(dropFile);
        reader.problems.throwIfAny();
        return settings;
    }

    private void layer(YamlFile file, Mapping top) {
        Bundled.validate(file, top, "settings", "settings", problems);
        top.entries().forEach((name, entry) -> {
            if (name.equals("selectors") && entry.value() instanceof Mapping mapping) {
                selectors = selectors(mapping);
            } else if (Layers.CHANGES.contains(name)) {
                changesRules = true; // read with the rule set, which knows what there is to change
            } else {
                state(name, entry.value());
            }
        });
    }

    private void state(String name, YamlValue value) {
        if (value instanceof Scalar scalar) {
            stated.put(name, scalar);
            origins.put(name, scalar.place().file() + ":" + scalar.place().line());
        } else if (value instanceof Mapping mapping) {
            mapping.entries().forEach((inner, entry) -> state(name + "." + inner, entry.value()));
        }
    }

    private void override(String name, String text) {
        Place place = new Place(COMMAND_LINE, 1, 1);
        if (fact(name).isEmpty() && !name.equals("system") && !name.equals("set_out") && !name.equals(RULE_SET)) {
            TreeSet<String> names = new TreeSet<>(known.keySet());
            names.addAll(List.of("system", "set_out", RULE_SET));
            problems.add(
                    place,
                    "unknown setting \"" + name + "\"" + NearMiss.hint(name, names) + " Known: "
                            + String.join(", ", names));
            return;
        }
        stated.put(name, new Scalar(place, text, true, text));
        origins.put(name, COMMAND_LINE);
    }

    private DropSettings settings(String dropFile) {
        Map<String, Quantity> values = new HashMap<>();
        Map<String, String> texts = new HashMap<>();
        Map<String, Boolean> switches = new HashMap<>();
        stated.forEach((name, scalar) -> {
            fact(name).ifPresent(fact -> {
                switch (fact.type()) {
                    case NUMBER -> Reading.value(scalar, fact, problems).ifPresent(q -> values.put(name, q));
                    case TEXT -> texts.put(name, text(name, scalar));
                    case TRUTH -> switches.put(name, truth(name, scalar));
                }
            });
        });
        oneSetOfPressures();
        Scalar system = stated.get("system");
        Scalar ruleSet = stated.get(RULE_SET);
        return new DropSettings(
                dropFile,
                system == null ? "" : system.text(),
                ruleSet == null ? "" : ruleSet.text(),
                changesRules,
                setOut(),
                values,
                texts,
                switches,
                origins,
                selectors);
    }

    /** Those of the catalogue, and given pressures, whose zones are named by whoever gives them. */
    private Optional<FactSpec> fact(String name) {
        if (name.startsWith(WindSetting.GIVEN_ZONES) && name.length() > WindSetting.GIVEN_ZONES.length()) {
            return Optional.of(new FactSpec("settings." + name, FactType.NUMBER, Dimension.PRESSURE, "given suction"));
        }
        return Optional.ofNullable(known.get(name));
    }

    /** Which of two would go before the other is not for the program to say. */
    private void oneSetOfPressures() {
        Optional<String> uplift =
                stated.keySet().stream().filter(n -> n.startsWith("uplift.")).findFirst();
        stated.entrySet().stream()
                .filter(e -> e.getKey().startsWith(WindSetting.GIVEN_ZONES) && uplift.isPresent())
                .findFirst()
                .ifPresent(e -> problems.add(
                        e.getValue().place(),
                        "wind.given.zones and uplift both give pressures (uplift at " + origins.get(uplift.orElse(""))
                                + "); keep one of them"));
    }

    private String text(String name, Scalar scalar) {
        List<String> choices = CHOICES.getOrDefault(name, List.of(scalar.text()));
        if (!choices.contains(scalar.text())) {
            problems.add(
                    scalar.place(),
                    name + " is "
                            + String.join(", ", choices.subList(0, choices.size() - 1))
                            + " or " + choices.get(choices.size() - 1) + ", not \"" + scalar.text() + "\"");
        }
        return scalar.text();
    }

    private boolean truth(String name, Scalar scalar) {
        if (!scalar.text().equals("true") && !scalar.text().equals("false")) {
            problems.add(scalar.place(), name + " is true or false, not \"" + scalar.text() + "\"");
        }
        return scalar.text().equals("true");
    }

    private SetOut setOut() {
        Scalar scalar = stated.get("set_out");
        if (scalar == null) {
            return SetOut.LEFT;
        }
        for (SetOut setOut : SetOut.values()) {
            if (setOut.name().toLowerCase(Locale.ROOT).equals(scalar.text())) {
                return setOut;
            }
        }
        problems.add(scalar.place(), "set_out is left, right or centred, not \"" + scalar.text() + "\"");
        return SetOut.LEFT;
    }

    private SelectorSettings selectors(Mapping mapping) {
        return new SelectorSettings(list(mapping, "roofs"), list(mapping, "supports"), list(mapping, "excluded"));
    }

    private List<Selector> list(Mapping mapping, String key) {
        List<Selector> selectors = new ArrayList<>();
        for (YamlValue item : mapping.items(key)) {
            if (item instanceof Mapping one) {
                selectors.add(new Selector(
                        pattern(one, "name"),
                        one.text("class").orElse(""),
                        pattern(one, "classification"),
                        one.text("property").orElse(""),
                        pattern(one, "value")));
            }
        }
        return selectors;
    }

    private Optional<Pattern> pattern(Mapping one, String key) {
        return one.scalar(key).flatMap(scalar -> {
            try {
                return Optional.of(Pattern.compile(scalar.text(), Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE));
            } catch (PatternSyntaxException e) {
                problems.add(scalar.at(Math.max(0, e.getIndex())), "not a pattern: " + e.getDescription());
                return Optional.empty();
            }
        });
    }
}
