package runtrue.rules;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A roof system's values, read from a file under rules/systems.
 *
 * @param source who published the values, or that they are invented for the demo
 * @param values by name in SI, for example {@code cover_width}; see the JSON Schema for the names
 * @param texts by name, for example {@code material}
 * @param tables by name, for the tables that a rule set leaves to the system
 * @param otherCovers widths that the profile is also rolled in, metres: shown beside what was laid out, never judged by
 */
public record RoofSystem(
        String name,
        String title,
        String source,
        String file,
        Map<String, Quantity> values,
        Map<String, String> texts,
        Map<String, Table> tables,
        List<Double> otherCovers) {
    public RoofSystem {
        otherCovers = List.copyOf(otherCovers);
        values = Map.copyOf(values);
        texts = Map.copyOf(texts);
        tables = Map.copyOf(tables);
    }

    /** A system of one width. */
    public RoofSystem(
            String name,
            String title,
            String source,
            String file,
            Map<String, Quantity> values,
            Map<String, String> texts,
            Map<String, Table> tables) {
        this(name, title, source, file, values, texts, tables, List.of());
    }

    /** The same system under a name for its file that does not depend on the machine. */
    public RoofSystem shownAs(String shownFile) {
        return new RoofSystem(name, title, source, shownFile, values, texts, tables, otherCovers);
    }

    /** The value in SI, if the system states it. */
    public Optional<Double> si(String value) {
        return Optional.ofNullable(values.get(value)).map(Quantity::si);
    }
}
