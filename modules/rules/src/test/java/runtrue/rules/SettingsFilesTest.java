package runtrue.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.roof.SetOut;

class SettingsFilesTest {
    @TempDir
    Path folder;

    private DropSettings load(String text, Map<String, String> commandLine) throws IOException {
        Path file = folder.resolve(SettingsFiles.NAME);
        Files.writeString(file, text);
        return SettingsFiles.load(Optional.empty(), Optional.of(file), commandLine);
    }

    @Test
    void the_drops_file_goes_before_the_defaults_and_the_command_line_before_both() throws IOException {
        DropSettings settings = load(
                "set_out: right\ntemperature_range: 60 K\nuplift: {edge: 1.2 kPa}\n",
                Map.of("uplift.edge", "1.5 kPa", "system", "dunlin-400"));
        assertThat(settings.si("uplift.edge")).contains(1500.0);
        assertThat(settings.si("temperature_range")).contains(60.0);
        assertThat(settings.setOut()).isEqualTo(SetOut.RIGHT);
        assertThat(settings.system()).isEqualTo("dunlin-400");
        assertThat(settings.texts()).containsEntry("fixed_point", "ridge");
    }

    @Test
    void every_value_says_where_it_was_stated() throws IOException {
        DropSettings settings = load("uplift:\n  edge: 1.2 kPa\n", Map.of("rolled_on_site", "true"));
        assertThat(settings.origins().get("uplift.edge")).endsWith("runtrue.yaml:2");
        assertThat(settings.origins()).containsEntry("rolled_on_site", "command line");
        assertThat(settings.origins().get("fixed_point")).startsWith("rules/settings/defaults.yaml:");
    }

    @Test
    void what_is_not_stated_stays_unknown() throws IOException {
        DropSettings settings = load("set_out: left\n", Map.of());
        assertThat(settings.si("building_height")).isEmpty();
        assertThat(settings.switches()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            uplift: {edge: 1.2}           | :1:16: "1.2" has no unit
            uplift: {edge: 1.2 m}         | :1:16: "1.2 m" is of dimension length; wanted is pressure
            uplft: {edge: 1.2 kPa}        | :1:1: unknown key "uplft"; did you mean "uplift"?
            uplift: {edg: 1.2 kPa}        | :1:10: unknown key "edg"; did you mean "edge"?
            rolled_on_site: maybe         | :1:17: "maybe" is not allowed here
            set_out: middle               | :1:10: "middle" is not allowed here
            selectors: {roofs: [{name: "(x"}]} | :1:
            wind: {standard: EN 1991}     | :1:18: "EN 1991" is not allowed here
            wind: {velocity: 22 kPa}      | :1:18: "22 kPa" is of dimension pressure; wanted is velocity
            wind: {given: {zones: {F: 2}}} | :1:27: "2" has no unit
            """)
    void errors_say_where_and_what(String text, String message) {
        assertThatThrownBy(() -> load(text, Map.of()))
                .isInstanceOf(RuleException.class)
                .hasMessageContaining(message);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            uplift: {edge: -1.6 kPa}      | :1:16: uplift.edge is -1.6 kPa; uplift is given as a positive number
            uplift: {corner: 0 kPa}       | :1:18: uplift.corner is 0 kPa; uplift is given as a positive number
            temperature_range: -75 K      | :1:20: temperature_range is -75 K; it must be more than 0
            rolling_limit: 0 m            | :1:16: rolling_limit is 0 m; it must be more than 0
            transport_length: -12 m       | :1:19: transport_length is -12 m; it must be more than 0
            building_height: 0 m          | :1:18: building_height is 0 m; it must be more than 0
            build_up_depth: -1 mm         | :1:17: build_up_depth is -1 mm; it must not be negative
            building_height: 1e400 m      | :1:18: "1e400 m" is too large
            wind: {load_factor: 0}        | :1:21: wind.load_factor is 0; it must be more than 0
            wind: {given: {zones: {F: -1 kPa}}} | :1:27: wind.given.zones.F is -1 kPa; uplift is given as a positive number
            building_height: NaN m        | :1:18: "NaN m" is no quantity
            """)
    void a_value_out_of_its_bounds_is_refused(String text, String message) {
        assertThatThrownBy(() -> load(text, Map.of()))
                .isInstanceOf(RuleException.class)
                .hasMessageContaining(message);
    }

    @Test
    void the_command_line_keeps_the_same_bounds() {
        assertThatThrownBy(() -> load("set_out: left\n", Map.of("uplift.interior", "-0.5 kPa")))
                .isInstanceOf(RuleException.class)
                .hasMessageContaining("command line:1:1: uplift.interior is -0.5 kPa; uplift is given as a positive");
    }

    @Test
    void no_build_up_at_all_is_allowed() throws IOException {
        assertThat(load("build_up_depth: 0 mm\n", Map.of()).si("build_up_depth"))
                .contains(0.0);
    }

    @Test
    void an_unknown_setting_on_the_command_line_is_refused_with_the_nearest() {
        assertThatThrownBy(() -> load("set_out: left\n", Map.of("uplift.edgy", "1 kPa")))
                .hasMessageContaining("unknown setting \"uplift.edgy\"; did you mean \"uplift.edge\"?");
    }

    @Test
    void selectors_are_read_as_patterns() throws IOException {
        DropSettings settings = load("""
                selectors:
                  supports:
                    - name: ^Pfette
                    - property: Pset_MemberCommon.Reference
                      value: P\\d+
                  excluded:
                    - class: IfcSlab
                      name: canopy
                """, Map.of());
        assertThat(settings.selectors().supports())
                .extracting(
                        s -> s.name().map(Pattern::pattern).orElse(""),
                        s -> s.property(),
                        s -> s.value().map(Pattern::pattern).orElse(""))
                .containsExactly(tuple("^Pfette", "", ""), tuple("", "Pset_MemberCommon.Reference", "P\\d+"));
        assertThat(settings.selectors().excluded())
                .as("conditions of one item hold together")
                .singleElement()
                .satisfies(s -> {
                    assertThat(s.className()).isEqualTo("IfcSlab");
                    assertThat(s.name().map(Pattern::pattern)).hasValue("canopy");
                });
    }

    @Test
    void wind_is_read_with_its_origins_and_plain_numbers_need_no_unit() throws IOException {
        DropSettings settings = load("""
                wind:
                  standard: EN 1991-1-4
                  velocity: 22 m/s
                  terrain: III
                  load_factor: 1.5
                  internal: {highest: 0.2, lowest: -0.3}
                """, Map.of("wind.velocity", "24 m/s"));
        assertThat(settings.si("wind.velocity")).contains(24.0);
        assertThat(settings.si("wind.load_factor")).contains(1.5);
        assertThat(settings.si("wind.internal.lowest")).contains(-0.3);
        assertThat(settings.texts()).containsEntry("wind.terrain", "III");
        assertThat(settings.origins().get("wind.load_factor")).endsWith("runtrue.yaml:5");
    }

    @Test
    void pressures_are_given_once() {
        assertThatThrownBy(() -> load("uplift: {edge: 1.2 kPa}\nwind: {given: {zones: {edge: 1.3 kPa}}}\n", Map.of()))
                .isInstanceOf(RuleException.class)
                .hasMessageContaining(":2:30: wind.given.zones and uplift both give pressures")
                .hasMessageContaining("runtrue.yaml:1");
    }

    @Test
    void a_standard_that_is_not_known_is_refused_on_the_command_line_too() {
        assertThatThrownBy(() -> load("set_out: left\n", Map.of("wind.standard", "EN 1991")))
                .isInstanceOf(RuleException.class)
                .hasMessageContaining("wind.standard is EN 1991-1-4, ASCE 7-16");
    }
}
