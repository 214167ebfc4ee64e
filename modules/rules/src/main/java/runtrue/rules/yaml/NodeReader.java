package runtrue.rules.yaml;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import runtrue.rules.yaml.YamlValue.Entry;
import runtrue.rules.yaml.YamlValue.Mapping;
import runtrue.rules.yaml.YamlValue.Scalar;
import runtrue.rules.yaml.YamlValue.Sequence;

/** Turns the parser's nodes into values of ours; counts, so that nested aliases cannot blow up. */
final class NodeReader {
    private static final int MOST_VALUES = 20_000;
    private static final int DEEPEST = 30;

    private final String file;
    private final String text;
    private final Problems problems;
    private int values;

    NodeReader(String file, String text, Problems problems) {
        this.file = file;
        this.text = text;
        this.problems = problems;
    }

    Optional<YamlValue> read(Node node) {
        return read(node, 0);
    }

    private Optional<YamlValue> read(Node node, int depth) {
        Place place = place(node);
        if (++values > MOST_VALUES || depth > DEEPEST) {
            if (values == MOST_VALUES + 1 || depth > DEEPEST) {
                problems.add(place, "too many or too deeply nested values (aliases that refer to each other?)");
                values = MOST_VALUES + 1;
            }
            return Optional.empty();
        }
        if (node instanceof MappingNode mapping) {
            return Optional.of(mapping(mapping, place, depth));
        } else if (node instanceof SequenceNode sequence) {
            List<YamlValue> items = new ArrayList<>();
            sequence.getValue().forEach(item -> read(item, depth + 1).ifPresent(items::add));
            return Optional.of(new Sequence(place, items));
        } else if (node instanceof ScalarNode scalar) {
            return Optional.of(new Scalar(place, scalar.getValue(), scalar.isPlain(), source(scalar)));
        }
        problems.add(place, "an alias to nowhere");
        return Optional.empty();
    }

    private Mapping mapping(MappingNode node, Place place, int depth) {
        Map<String, Entry> entries = new LinkedHashMap<>();
        for (NodeTuple tuple : node.getValue()) {
            Place keyPlace = place(tuple.getKeyNode());
            if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
                problems.add(keyPlace, "a key must be a plain word");
                continue;
            }
            Optional<YamlValue> value = read(tuple.getValueNode(), depth + 1);
            if (entries.containsKey(key.getValue())) {
                problems.add(keyPlace, "\"" + key.getValue() + "\" is given twice");
            } else {
                value.ifPresent(v -> entries.put(key.getValue(), new Entry(keyPlace, v)));
            }
        }
        return new Mapping(place, entries);
    }

    private Place place(Node node) {
        return node.getStartMark()
                .map(mark -> new Place(file, mark.getLine() + 1, mark.getColumn() + 1))
                .orElse(new Place(file, 1, 1));
    }

    /** Marks count code points; files hardly ever hold others than those of one char, and then both agree. */
    private String source(ScalarNode node) {
        int from = node.getStartMark().map(Mark::getIndex).orElse(0);
        int to = node.getEndMark().map(Mark::getIndex).orElse(from);
        int points = text.codePointCount(0, text.length());
        int start = text.offsetByCodePoints(0, Math.min(from, points));
        return text.substring(start, text.offsetByCodePoints(start, Math.min(to, points) - Math.min(from, points)));
    }
}
