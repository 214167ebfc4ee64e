package runtrue.rules.yaml;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A part of a YAML file that knows where it stands. */
public sealed interface YamlValue {
    Place place();

    /**
     * A mapping.
     *
     * @param entries in the order of the file, keys unique
     */
    record Mapping(Place place, Map<String, Entry> entries) implements YamlValue {
        public Optional<YamlValue> get(String key) {
            return Optional.ofNullable(entries.get(key)).map(Entry::value);
        }

        /** The scalar's text, empty when absent or no scalar. */
        public Optional<String> text(String key) {
            return scalar(key).map(Scalar::text);
        }

        public Optional<Scalar> scalar(String key) {
            return get(key).filter(Scalar.class::isInstance).map(Scalar.class::cast);
        }

        public Optional<Mapping> mapping(String key) {
            return get(key).filter(Mapping.class::isInstance).map(Mapping.class::cast);
        }

        /** The items of a sequence, or nothing when absent. */
        public List<YamlValue> items(String key) {
            return get(key).map(YamlValue::items).orElse(List.of());
        }
    }

    /** A key with its own place. */
    record Entry(Place keyPlace, YamlValue value) {}

    record Sequence(Place place, List<YamlValue> values) implements YamlValue {}

    /**
     * A scalar.
     *
     * @param plain written without quotes: then it may be a number, a truth value or null
     * @param source the characters of the file from its start to its end, quotes and indentation included
     */
    record Scalar(Place place, String text, boolean plain, String source) implements YamlValue {
        /** Where the character of {@link #text} with this index stands in the file. */
        public Place at(int index) {
            return ScalarPlaces.of(this, index);
        }
    }

    /** The items of a sequence; of anything else, itself alone. */
    default List<YamlValue> items() {
        return this instanceof Sequence sequence ? sequence.values() : List.of(this);
    }
}
