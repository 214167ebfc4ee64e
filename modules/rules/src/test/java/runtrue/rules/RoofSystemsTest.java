package runtrue.rules;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoofSystemsTest {
    @TempDir
    Path folder;

    private RoofSystem load(String name, String value) throws IOException {
        String good = Files.readString(Path.of(System.getProperty("runtrue.root"), "rules/systems/kestrel-500.yaml"));
        String changed = good.replaceFirst("(?m)^  " + name + ": .*$", "  " + name + ": " + value);
        assertThat(changed).isNotEqualTo(good);
        Path file = folder.resolve("changed.yaml");
        Files.writeString(file, changed);
        return RoofSystems.load(file);
    }

    @ParameterizedTest
    @CsvSource({
        "cover_width, 0 mm, more than 0",
        "cover_width, 49 mm, at least 50 mm",
        "clip_spacing, 0 mm, more than 0",
        "thickness, -0.6 mm, more than 0",
        "girth, 0 mm, more than 0",
        "density, 0 kg/m3, more than 0",
        "expansion, -12e-6 1/K, more than 0",
        "clip_resistance, 0 kN, more than 0",
        "minimum_pitch, -2 deg, not be negative",
        "clip_travel, -1 mm, not be negative",
        "screws_per_clip, -1 pcs, not be negative",
        "build_up_depth, -180 mm, not be negative",
        "girth, 1e400 mm, is too large"
    })
    void a_value_out_of_its_bounds_is_refused_with_its_place(String name, String value, String message) {
        assertThatThrownBy(() -> load(name, value))
                .isInstanceOf(RuleException.class)
                .message()
                .matches("(?s).*changed\\.yaml:\\d+:" + (name.length() + 5) + ": .*")
                .contains(name.equals("girth") && value.startsWith("1e400") ? "\"1e400 mm\"" : name + " is ")
                .contains(message);
    }

    @ParameterizedTest
    @CsvSource({
        "cover_width, 50 mm, 0.05",
        "minimum_pitch, 0 deg, 0",
        "clip_travel, 0 mm, 0",
        "screws_per_clip, 0 pcs, 0",
        "build_up_depth, 0 mm, 0"
    })
    void a_value_on_its_bound_is_read(String name, String value, double si) throws IOException {
        assertThat(load(name, value).si(name)).contains(si);
    }

    @Test
    void other_widths_that_the_profile_is_rolled_in_are_read() throws IOException {
        assertThat(withOthers("[400 mm, 0.6 m]").otherCovers()).containsExactly(0.4, 0.6);
        assertThatThrownBy(() -> withOthers("[0 mm]")).hasMessageContaining("cover_width is 0 mm");
        assertThatThrownBy(() -> withOthers("[1 kN]")).hasMessageContaining("1 kN");
    }

    private RoofSystem withOthers(String widths) throws IOException {
        String good = Files.readString(Path.of(System.getProperty("runtrue.root"), "rules/systems/kestrel-500.yaml"));
        String changed = good.replaceAll("other_cover_widths: .*", "other_cover_widths: " + widths);
        Path file = folder.resolve("others.yaml");
        Files.writeString(file, changed);
        return RoofSystems.load(file);
    }
}
