package runtrue.result.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import runtrue.result.CheckResult;
import tools.jackson.databind.JsonNode;

/** Holds the schema to the records: same keys in the same order, nothing else allowed, all but optional ones required. */
class SchemaAgreesTest {
    private final JsonNode schema = schema();

    @TestFactory
    Stream<DynamicTest> everyRecordHasItsDefinition() {
        return records().stream().map(r -> DynamicTest.dynamicTest(r.getSimpleName(), () -> agrees(r)));
    }

    @Test
    void everyDefinitionHasItsRecord() {
        assertThat(schema.path("$defs").propertyNames())
                .containsExactlyInAnyOrderElementsOf(records().stream()
                        .filter(r -> r != CheckResult.class)
                        .map(Class::getSimpleName)
                        .toList());
    }

    private void agrees(Class<?> type) {
        JsonNode definition =
                type == CheckResult.class ? schema : schema.path("$defs").path(type.getSimpleName());
        List<String> names = Arrays.stream(type.getRecordComponents())
                .map(RecordComponent::getName)
                .toList();
        assertThat(definition.path("properties").propertyNames()).containsExactlyElementsOf(names);
        assertThat(definition.path("additionalProperties").asBoolean(true)).isFalse();
        List<String> required = definition
                .path("required")
                .valueStream()
                .map(JsonNode::asString)
                .toList();
        assertThat(required)
                .containsExactlyElementsOf(Arrays.stream(type.getRecordComponents())
                        .filter(c -> c.getType() != Optional.class && c.getType() != OptionalDouble.class)
                        .map(RecordComponent::getName)
                        .toList());
        names.forEach(n -> assertThat(definition
                        .path("properties")
                        .path(n)
                        .path("description")
                        .asString(""))
                .as("description of %s.%s", type.getSimpleName(), n)
                .endsWith("."));
    }

    private static Set<Class<?>> records() {
        Set<Class<?>> found = new LinkedHashSet<>();
        collect(CheckResult.class, found);
        return found;
    }

    private static void collect(Type type, Set<Class<?>> found) {
        if (type instanceof ParameterizedType generic) {
            Arrays.stream(generic.getActualTypeArguments()).forEach(t -> collect(t, found));
        } else if (type instanceof Class<?> c && c.isRecord() && found.add(c)) {
            Arrays.stream(c.getRecordComponents()).forEach(r -> collect(r.getGenericType(), found));
        }
    }

    private static JsonNode schema() {
        try (InputStream in =
                Objects.requireNonNull(CheckResult.class.getResourceAsStream("/runtrue/result/result.schema.json"))) {
            return RecordReader.mapper().readTree(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
