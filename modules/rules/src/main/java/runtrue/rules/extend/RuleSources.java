package runtrue.rules.extend;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import runtrue.rules.yaml.Place;
import runtrue.rules.yaml.YamlValue;
import runtrue.rules.yaml.YamlValue.Mapping;

/**
 * Where the parts of a rule set stand.
 *
 * @param chain its files, first the one that extends none
 * @param origins by dotted name, for example {@code rules.minimum-pitch.at least} or {@code definitions.uplift.value}: the
 *     place of the key that is in force
 */
public record RuleSources(List<Source> chain, List<SwitchedOff> switchedOff, Map<String, Place> origins) {
    public RuleSources {
        chain = List.copyOf(chain);
        switchedOff = List.copyOf(switchedOff);
        origins = Map.copyOf(origins);
    }

    /** A file of the chain; the hash is the SHA-256 of its text. */
    public record Source(String name, String version, String file, String hash) {}

    public static RuleSources of(Layered layered) {
        Map<String, Place> origins = new HashMap<>();
        Mapping top = layered.top();
        for (String group : List.of("edge_zone", "definitions", "tables")) {
            top.mapping(group).ifPresent(mapping -> origins(group, mapping, origins));
        }
        for (YamlValue rule : top.items("rules")) {
            if (rule instanceof Mapping mapping) {
                String name = "rules." + mapping.text("id").orElse("");
                origins.put(name, mapping.place());
                mapping.entries().forEach((key, entry) -> origins.put(name + "." + key, entry.keyPlace()));
            }
        }
        List<Source> chain = layered.chain().stream()
                .map(l -> new Source(
                        l.name(),
                        l.version(),
                        l.file().yaml().name(),
                        l.file().yaml().hash()))
                .toList();
        return new RuleSources(chain, layered.switchedOff(), origins);
    }

    private static void origins(String name, Mapping mapping, Map<String, Place> origins) {
        mapping.entries().forEach((key, entry) -> {
            String full = name + "." + key;
            origins.put(full, entry.keyPlace());
            if (entry.value() instanceof Mapping inner) {
                origins(full, inner, origins);
            }
        });
    }

    public Optional<Place> origin(String name) {
        return Optional.ofNullable(origins.get(name));
    }

    /** Keys of a rule, definition or table that stand in another file than it itself, examples left out. */
    public List<Place> changedIn(String name) {
        String home = origin(name).map(Place::file).orElse("");
        return origins.entrySet().stream()
                .filter(e -> e.getKey().startsWith(name + ".") && !e.getKey().equals(name + ".examples"))
                .map(Map.Entry::getValue)
                .filter(place -> !place.file().equals(home))
                .sorted()
                .toList();
    }

    /** Places of this file under another name. */
    public RuleSources shownAs(String file, String shown) {
        Map<String, Place> renamed = new HashMap<>();
        origins.forEach((name, place) ->
                renamed.put(name, place.file().equals(file) ? new Place(shown, place.line(), place.column()) : place));
        List<Source> files = chain.stream()
                .map(s -> s.file().equals(file) ? new Source(s.name(), s.version(), shown, s.hash()) : s)
                .toList();
        return new RuleSources(files, switchedOff, renamed);
    }
}
