package runtrue.result.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.result.CheckResult;
import runtrue.result.InventedHall;
import runtrue.result.Measure;
import runtrue.result.build.ResultBuilder;

class ResultJsonTest {
    private static final CheckResult RESULT = ResultBuilder.build(InventedHall.input());

    @TempDir
    Path folder;

    @Test
    void aWrittenResultIsReadBackAsItWas() throws IOException {
        Path file = folder.resolve("result.json");
        ResultJson.write(RESULT, file);
        assertThat(ResultJson.read(file)).isEqualTo(RESULT);
    }

    @Test
    void whatChangedIsWrittenAndReadToo() throws IOException {
        CheckResult compared = RESULT.since(ResultBuilder.build(InventedHall.input("2", "ef".repeat(32))));
        assertThat(compared.changes()).isPresent();
        Path file = folder.resolve("result.json");
        ResultJson.write(compared, file);
        assertThat(ResultJson.read(file)).isEqualTo(compared);
        assertThat(schema().validate(json(compared), InputFormat.JSON)).isEmpty();
    }

    @Test
    void aWrittenResultObeysTheSchema() throws IOException {
        assertThat(schema().validate(json(RESULT), InputFormat.JSON)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "'\"format\" : \"runtrue-result/3\"', '\"format\" : \"runtrue-result/9\"'",
        "'\"pitchDegrees\"', '\"pitch\"'",
        "'\"outcome\" : \"not assessed\"', '\"outcome\" : \"fine\"'",
        "'\"notAssessed\" : 1', '\"notAssessed\" : -1'",
        "'\"drop\" : ', '\"extra\" : 1, \"drop\" : '"
    })
    void theSchemaRefusesWhatTheFormatDoesNotKnow(String from, String to) throws IOException {
        String json = json(RESULT);
        assertThat(json).contains(from);
        assertThat(schema().validate(json.replace(from, to), InputFormat.JSON)).isNotEmpty();
    }

    @Test
    void twoWritesAreTheSameBytesInAnyLocale() throws IOException {
        String first = json(RESULT);
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(new Locale("ar", "SA"));
            assertThat(json(ResultBuilder.build(InventedHall.input()))).isEqualTo(first);
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void theWriterAgreesWithDataBinding() throws IOException {
        var mapper = RecordReader.mapper();
        assertThat(mapper.readTree(json(RESULT)))
                .isEqualTo(mapper.readTree(json(mapper.treeToValue(mapper.valueToTree(RESULT), CheckResult.class))));
        assertThat(mapper.readTree(json(RESULT)).propertyNames())
                .containsExactlyElementsOf(mapper.valueToTree(RESULT).propertyNames());
    }

    @ParameterizedTest
    @CsvSource({"0.1, 0.1", "430001, 430001", "0.00001, 0.00001", "-0.0, 0", "5300006.8, 5300006.8", "0.3048, 0.3048"})
    void numbersAreWrittenPlain(double number, String text) throws IOException {
        var out = new ByteArrayOutputStream();
        RecordWriter.write(new Measure(number, "m"), out);
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("\"value\" : " + text + ",");
    }

    @Test
    void textFromAModelIsEscaped() throws IOException {
        var out = new ByteArrayOutputStream();
        RecordWriter.write(new Measure(1, "a\"\n\u0001\u00e9"), out);
        assertThat(out.toString(StandardCharsets.UTF_8)).contains("\"a\\\"\\n\\u0001\u00e9\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"format\":\"runtrue-result/1\"}", "{}", "[1]"})
    void anotherFormatIsRefusedByName(String json) throws IOException {
        Path file = Files.writeString(folder.resolve("other.json"), json);
        assertThatThrownBy(() -> ResultJson.read(file))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("other.json is not a runtrue-result/3 result");
    }

    @Test
    void anUnknownKeyIsRefused() throws IOException {
        Path file = Files.writeString(
                folder.resolve("more.json"), json(RESULT).replace("\"drop\" : ", "\"extra\" : 1, \"drop\" : "));
        assertThatThrownBy(() -> ResultJson.read(file))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("extra");
    }

    @Test
    void aBrokenFileIsRefusedWithItsLine() throws IOException {
        Path file = Files.writeString(folder.resolve("broken.json"), "{\n\"format\" : \n}");
        assertThatThrownBy(() -> ResultJson.read(file))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("broken.json, line 3");
    }

    private static String json(CheckResult result) throws IOException {
        var out = new ByteArrayOutputStream();
        ResultJson.write(result, out);
        return out.toString(StandardCharsets.UTF_8);
    }

    private static Schema schema() throws IOException {
        try (InputStream in =
                Objects.requireNonNull(CheckResult.class.getResourceAsStream("/runtrue/result/result.schema.json"))) {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(in, InputFormat.JSON);
        }
    }
}
