package runtrue.rules.yaml;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.BooleanNode;
import tools.jackson.databind.node.DecimalNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.NullNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.node.StringNode;

/** Checks a value against a JSON Schema (2020-12) and says where in the YAML file it went wrong. */
public final class SchemaCheck {
    private SchemaCheck() {}

    /** Adds every violation to {@code problems}. */
    public static void check(YamlValue value, String schema, Problems problems) {
        Schema compiled = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(schema, InputFormat.JSON);
        List<Error> errors =
                compiled.validate(json(value), context -> context.executionConfig(c -> c.locale(Locale.ROOT)));
        new SchemaErrors(value, compiled.getSchemaNode(), problems).report(errors);
    }

    static JsonNode json(YamlValue value) {
        JsonNodeFactory factory = JsonNodeFactory.instance;
        if (value instanceof YamlValue.Mapping mapping) {
            ObjectNode object = factory.objectNode();
            mapping.entries().forEach((key, entry) -> object.set(key, json(entry.value())));
            return object;
        } else if (value instanceof YamlValue.Sequence sequence) {
            ArrayNode array = factory.arrayNode();
            sequence.values().forEach(item -> array.add(json(item)));
            return array;
        }
        return scalar((YamlValue.Scalar) value);
    }

    /** By the core schema of YAML 1.2. */
    private static JsonNode scalar(YamlValue.Scalar scalar) {
        String text = scalar.text();
        if (!scalar.plain()) {
            return StringNode.valueOf(text);
        } else if (Set.of("true", "True", "TRUE").contains(text)) {
            return BooleanNode.TRUE;
        } else if (Set.of("false", "False", "FALSE").contains(text)) {
            return BooleanNode.FALSE;
        } else if (List.of("", "~", "null", "Null", "NULL").contains(text)) {
            return NullNode.getInstance();
        } else if (text.matches("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d{1,3})?")) {
            return DecimalNode.valueOf(new BigDecimal(text.startsWith("+") ? text.substring(1) : text));
        }
        return StringNode.valueOf(text);
    }
}
