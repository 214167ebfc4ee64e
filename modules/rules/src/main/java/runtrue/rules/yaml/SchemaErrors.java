package runtrue.rules.yaml;

import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.List;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;

/** Puts the validator's findings into words, at the place in the YAML file. */
final class SchemaErrors {
    private SchemaErrors() {}

    static void report(Error error, YamlValue root, Problems problems) {
        YamlValue value = find(root, error.getInstanceLocation());
        String property = error.getProperty();
        String keyword = error.getKeyword();
        if ("additionalProperties".equals(keyword) || "unevaluatedProperties".equals(keyword)) {
            Place place = value instanceof YamlValue.Mapping mapping
                            && mapping.entries().containsKey(property)
                    ? mapping.entries().get(property).keyPlace()
                    : value.place();
            problems.add(place, unknownKey(error, property));
        } else if ("required".equals(keyword)) {
            problems.add(value.place(), "\"" + property + "\" is missing here");
        } else {
            problems.add(value.place(), words(error, value));
        }
    }

    private static String unknownKey(Error error, String property) {
        JsonNode properties = error.getSchemaNode();
        TreeSet<String> known = new TreeSet<>(knownKeys(properties));
        return "unknown key \"" + property + "\"" + NearMiss.hint(property, known)
                + (known.isEmpty() ? "" : " Known here: " + String.join(", ", known));
    }

    private static List<String> knownKeys(JsonNode schema) {
        return List.copyOf(schema.path("properties").propertyNames());
    }

    private static String words(Error error, YamlValue value) {
        String shown =
                value instanceof YamlValue.Scalar scalar ? "\"" + scalar.text() + "\" is not allowed here: " : "";
        String text = error.getMessage();
        JsonNode description = error.getSchemaNode() == null ? null : error.getSchemaNode();
        String more = description != null && description.isString() ? " (" + description.asString() + ")" : "";
        return shown + text + more;
    }

    private static YamlValue find(YamlValue root, NodePath path) {
        YamlValue at = root;
        for (int i = 0; i < path.getNameCount(); i++) {
            Object step = path.getElement(i);
            if (at instanceof YamlValue.Mapping mapping && mapping.entries().containsKey(step.toString())) {
                at = mapping.entries().get(step.toString()).value();
            } else if (at instanceof YamlValue.Sequence sequence && step instanceof Integer index) {
                at = sequence.values().get(index);
            }
        }
        return at;
    }
}
