package runtrue.rules.yaml;

import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;

/** Puts the validator's findings into words, at the place in the YAML file. */
final class SchemaErrors {
    private final YamlValue root;
    private final JsonNode schema;
    private final Problems problems;

    SchemaErrors(YamlValue root, JsonNode schema, Problems problems) {
        this.root = root;
        this.schema = schema;
        this.problems = problems;
    }

    void report(List<Error> errors) {
        Map<YamlValue, List<String>> alternatives = new LinkedHashMap<>();
        for (Error error : errors) {
            YamlValue value = find(error.getInstanceLocation());
            if (ofAlternative(error)) {
                alternatives.computeIfAbsent(value, v -> new ArrayList<>()).add("\"" + error.getProperty() + "\"");
            } else {
                report(error, value);
            }
        }
        alternatives.forEach(
                (value, keys) -> problems.add(value.place(), String.join(" or ", keys) + " is missing here"));
    }

    /** One of several keys that would each do. */
    private static boolean ofAlternative(Error error) {
        return "required".equals(error.getKeyword())
                && error.getEvaluationPath().toString().contains("/anyOf/");
    }

    private void report(Error error, YamlValue value) {
        String keyword = error.getKeyword();
        String property = error.getProperty();
        if ("additionalProperties".equals(keyword)) {
            problems.add(keyPlace(value, property), unknownKey(error, property));
        } else if ("required".equals(keyword)) {
            problems.add(value.place(), "\"" + property + "\" is missing here");
        } else if ("dependentRequired".equals(keyword)) {
            problems.add(value.place(), "\"" + error.getArguments()[0] + "\" is missing here");
        } else if (error.getSchemaNode() != null && error.getSchemaNode().isBoolean()) {
            problems.add(value.place(), "this key and another one here exclude each other");
        } else {
            String shown = value instanceof YamlValue.Scalar scalar
                    ? "\"" + scalar.text() + "\" is not allowed here: "
                    : "not allowed here: ";
            problems.add(value.place(), shown + error.getMessage());
        }
    }

    private static Place keyPlace(YamlValue value, String key) {
        return value instanceof YamlValue.Mapping mapping && mapping.entries().containsKey(key)
                ? mapping.entries().get(key).keyPlace()
                : value.place();
    }

    private String unknownKey(Error error, String property) {
        TreeSet<String> known =
                new TreeSet<>(declaring(error).path("properties").propertyNames());
        return "unknown key \"" + property + "\"" + NearMiss.hint(property, known)
                + (known.isEmpty() ? "" : " Known here: " + String.join(", ", known));
    }

    /** The part of the schema that holds the keyword that failed. */
    private JsonNode declaring(Error error) {
        NodePath path = error.getSchemaLocation().getFragment();
        JsonNode at = schema;
        for (int i = 0; i < path.getNameCount() - 1; i++) {
            Object step = path.getElement(i);
            at = step instanceof Integer index ? at.path(index) : at.path(step.toString());
        }
        return at;
    }

    private YamlValue find(NodePath path) {
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
