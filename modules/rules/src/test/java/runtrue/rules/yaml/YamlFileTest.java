package runtrue.rules.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.rules.yaml.YamlValue.Mapping;

class YamlFileTest {
    private final Problems problems = new Problems();

    private Optional<Mapping> parse(String text) {
        return new YamlFile("f.yaml", text).parse(problems);
    }

    private Place at(String text, String key, String sought) {
        YamlValue.Scalar scalar = parse(text).orElseThrow().scalar(key).orElseThrow();
        return scalar.at(scalar.text().indexOf(sought));
    }

    @Test
    void values_know_their_line_and_column() {
        Mapping top = parse("a: 1\nb:\n  c: text\n").orElseThrow();
        assertThat(top.mapping("b").orElseThrow().scalar("c").orElseThrow().place())
                .isEqualTo(new Place("f.yaml", 3, 6));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "k: one two",
                "k: 'one two'",
                "k: \"one two\"",
                "k: one\n   two",
                "k: >-\n  one\n  two",
                "k: |\n  one\n  two",
                "k: >\n\n    one two"
            })
    void a_place_within_a_scalar_is_found_whatever_its_style(String text) {
        Place place = at(text, "k", "two");
        String line = text.lines().toList().get(place.line() - 1);
        assertThat(line.substring(place.column() - 1)).startsWith("two");
    }

    @Test
    void escapes_fall_back_to_the_start_of_the_scalar() {
        assertThat(at("k: \"o\\u006ee two\"", "k", "two")).isEqualTo(new Place("f.yaml", 1, 4));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a: [1, 2", "a: b: c", "\t- x", "a: \"x", "a: *nowhere"})
    void bad_yaml_is_an_error_with_its_place(String text) {
        assertThat(parse(text)).isEmpty();
        assertThat(problems.lines()).singleElement().asString().matches("f\\.yaml:\\d+:\\d+: not readable as YAML: .*");
    }

    @Test
    void a_key_given_twice_is_an_error() {
        parse("a: 1\nb: 2\na: 3\n");
        assertThat(problems.lines()).containsExactly("f.yaml:3:1: \"a\" is given twice");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "# nothing\n"})
    void an_empty_file_is_an_error(String text) {
        assertThat(parse(text)).isEmpty();
        assertThat(problems.lines()).containsExactly("f.yaml:1:1: the file is empty");
    }

    @Test
    void a_list_at_the_top_is_an_error() {
        parse("- a\n");
        assertThat(problems.lines()).containsExactly("f.yaml:1:1: expected keys and values here");
    }

    @Test
    void aliases_that_multiply_are_stopped() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 12; i++) {
            String ref = "*a" + (i - 1);
            bomb.append("a").append(i).append(": &a").append(i).append(" [");
            bomb.append((ref + ", ").repeat(8)).append(ref).append("]\n");
        }
        parse(bomb.toString());
        assertThatThrownBy(problems::throwIfAny).hasMessageContaining("aliases");
    }

    @Test
    void the_hash_is_that_of_the_text() {
        // SHA-256 of "abc": FIPS 180-2, appendix B.1.
        assertThat(new YamlFile("f", "abc").hash())
                .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
