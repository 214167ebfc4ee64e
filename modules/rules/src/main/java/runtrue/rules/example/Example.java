package runtrue.rules.example;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import runtrue.rules.Quantity;
import runtrue.rules.yaml.Place;

/**
 * Facts, and what a rule has to say of them. What is not stated counts as missing.
 *
 * @param rule id
 * @param number among the examples of the rule with that outcome, from 1
 * @param about what the example is of, for people; may be empty
 * @param facts by name: a Double in SI, a String or a Boolean; in the order of the file
 * @param texts the same as written, with units
 * @param tables what a table of the roof system answers, in SI, by the table's name
 * @param limit that has to govern; empty where any will do
 * @param because words that the reason of what is not assessed has to hold; empty where any will do
 */
public record Example(
        String rule,
        Expected expected,
        int number,
        String about,
        Map<String, Object> facts,
        Map<String, String> texts,
        Map<String, Double> tables,
        Optional<Quantity> limit,
        String because,
        Place place) {
    public Example {
        facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
        texts = Collections.unmodifiableMap(new LinkedHashMap<>(texts));
        tables = Map.copyOf(tables);
    }

    /** For lists and messages: {@code minimum-pitch, does not conform, example 1}. */
    public String name() {
        return rule + ", " + expected.label() + ", example " + number;
    }
}
