package runtrue.result.json;

import java.io.OutputStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import runtrue.result.Labelled;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/**
 * Writes records by their components. Data binding would do the same, but loading it costs a cold start more than all
 * other writing together.
 */
final class RecordWriter {
    /** Decimal digits that a double holds whatever its value, so that 0.1 is written as 0.1. */
    private static final MathContext DIGITS = new MathContext(15);

    private final JsonGenerator json;
    private final Map<Class<?>, Component[]> components = new HashMap<>();

    private RecordWriter(JsonGenerator json) {
        this.json = json;
    }

    static void write(Record root, OutputStream out) {
        try (JsonGenerator json = JsonFactory.builder()
                .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
                .build()
                .createGenerator(context(), out)) {
            new RecordWriter(json).value(root);
            json.writeRaw('\n');
        }
    }

    /** One value a line with two spaces, whatever the platform: people compare results with text tools. */
    private static ObjectWriteContext context() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        return new ObjectWriteContext.Base() {
            @Override
            public PrettyPrinter getPrettyPrinter() {
                return new DefaultPrettyPrinter().withObjectIndenter(indenter).withArrayIndenter(indenter);
            }

            @Override
            public boolean hasPrettyPrinter() {
                return true;
            }
        };
    }

    private void value(Object value) {
        if (value instanceof String text) {
            json.writeString(text);
        } else if (value instanceof Double number) {
            json.writeNumber(plain(number));
        } else if (value instanceof Integer number) {
            json.writeNumber(number);
        } else if (value instanceof Long number) {
            json.writeNumber(number);
        } else if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else if (value instanceof Labelled word) {
            json.writeString(word.label());
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            list.forEach(this::value);
            json.writeEndArray();
        } else if (value instanceof Record part) {
            object(part);
        } else {
            throw new IllegalStateException("No JSON form for " + value.getClass());
        }
    }

    private void object(Record part) {
        json.writeStartObject();
        for (Component component : components.computeIfAbsent(part.getClass(), RecordWriter::componentsOf)) {
            Object value = present(component.of(part));
            if (value != null) {
                json.writeName(component.name());
                value(value);
            }
        }
        json.writeEndObject();
    }

    /** What an optional holds, else the value itself. */
    private static @Nullable Object present(Object value) {
        if (value instanceof Optional<?> optional) {
            return optional.orElse(null);
        }
        if (value instanceof OptionalDouble optional) {
            return optional.isPresent() ? (Object) optional.getAsDouble() : null;
        }
        return value;
    }

    private static String plain(double number) {
        return number == 0
                ? "0"
                : new BigDecimal(number).round(DIGITS).stripTrailingZeros().toPlainString();
    }

    private static Component[] componentsOf(Class<?> type) {
        RecordComponent[] of = type.getRecordComponents();
        Component[] all = new Component[of.length];
        for (int i = 0; i < of.length; i++) {
            all[i] = new Component(of[i].getName(), of[i].getAccessor());
        }
        return all;
    }

    private record Component(String name, Method accessor) {
        Object of(Record part) {
            try {
                return accessor.invoke(part);
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException("Record component " + accessor + " cannot be read", e);
            }
        }
    }
}
