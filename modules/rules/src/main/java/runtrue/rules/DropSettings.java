package runtrue.rules;

import java.util.Map;
import java.util.Optional;
import runtrue.roof.SetOut;

/**
 * What is settled for one drop besides its models. Later sources go before earlier ones: defaults, the drop's file, the
 * command line.
 *
 * @param file of the drop's own settings, empty when it has none
 * @param system name of the roof system
 * @param ruleSet file of the rule set that the drop is judged by; empty for the usual one
 * @param changesRules whether the file changes rules or switches some off
 * @param values by dotted name in SI, for example {@code uplift.edge}; see the JSON Schema for the names
 * @param texts by name, for example {@code fixed_point}
 * @param switches by name, for example {@code rolled_on_site}
 * @param origins of every value, text and switch by name: file and line, or {@code command line}
 */
public record DropSettings(
        String file,
        String system,
        String ruleSet,
        boolean changesRules,
        SetOut setOut,
        Map<String, Quantity> values,
        Map<String, String> texts,
        Map<String, Boolean> switches,
        Map<String, String> origins,
        SelectorSettings selectors) {
    public DropSettings {
        values = Map.copyOf(values);
        texts = Map.copyOf(texts);
        switches = Map.copyOf(switches);
        origins = Map.copyOf(origins);
    }

    /** The value in SI, if it is settled. */
    public Optional<Double> si(String value) {
        return Optional.ofNullable(values.get(value)).map(Quantity::si);
    }

    /** The drop's depth from skin to supports, or else the system's. */
    public Optional<Double> buildUpDepth(RoofSystem roofSystem) {
        return si("build_up_depth").or(() -> roofSystem.si("build_up_depth"));
    }
}
