package runtrue.report.page.data;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;
import java.util.List;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.json.JsonMapper;

class ScriptJsonTest {
    private static final JsonMapper MAPPER = new JsonMapper();

    private static String written(Consumer<ScriptJson> content) {
        StringWriter out = new StringWriter();
        content.accept(new ScriptJson(out));
        return out.toString();
    }

    @Property
    void anyTextComesBackAndCanEndNoElement(@ForAll String text) {
        String json = written(j -> j.text(text));
        assertThat(json).matches("[\\x20-\\x7e]*").doesNotContain("<", ">", "&");
        assertThat(MAPPER.readTree(json).asString()).isEqualTo(text);
    }

    @Test
    void linesThatScriptsTakeForEndsAreEscaped() {
        assertThat(written(j -> j.text("a\u2028b\u2029c</script><!--")))
                .isEqualTo("\"a\\u2028b\\u2029c\\u003c/script\\u003e\\u003c!--\"");
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "-0.0, 0", "0.1, 0.1", "1e21, 1000000000000000000000", "-2700, -2700", "NaN, null"})
    void numbersAreWrittenAsJsonHasThem(double number, String written) {
        assertThat(written(j -> j.number(number))).isEqualTo(written);
    }

    @ParameterizedTest
    @CsvSource({
        "1.00004, 1",
        "-0.00001, 0",
        "12.34567, 12.3457",
        "-3.5, -3.5",
        "100, 100",
        "NaN, null",
        "2e9, 2000000000"
    })
    void lengthsAreWrittenToATenthOfAMillimetre(double metres, String written) {
        assertThat(written(j -> j.object(() -> j.metres("x", metres)))).isEqualTo("{\"x\":[" + written + "]}");
    }

    @Test
    void listsWithinObjectsWithinListsHaveTheirCommas() {
        String json = written(j -> j.object(() -> {
            j.field("a", 1L);
            j.objects("rows", List.of("x", "y"), (k, row) -> {
                k.field("name", row);
                k.texts("none", List.of());
                k.list("deep", List.of(1.0, 2.0), k::number);
            });
            j.field("z", true);
        }));
        assertThat(MAPPER.readTree(json))
                .isEqualTo(MAPPER.readTree("{\"a\":1,\"rows\":[{\"name\":\"x\",\"none\":[],\"deep\":[1,2]},"
                        + "{\"name\":\"y\",\"none\":[],\"deep\":[1,2]}],\"z\":true}"));
    }
}
