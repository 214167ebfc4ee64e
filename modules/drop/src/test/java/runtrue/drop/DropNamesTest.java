package runtrue.drop;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DropNamesTest {
    @ParameterizedTest
    @CsvSource({
        "hall, hall",
        "Halle Süd, Halle Süd",
        "'a/b:c*d', a-b-c-d",
        "'..', drop",
        "'  . ', drop",
        "'', drop",
        "nul, drop-nul",
        "'COM1.v2', drop-COM1.v2",
        "'issue 3.', issue 3",
        "'-rf', rf"
    })
    void a_name_works_as_a_folder_name_everywhere(String wanted, String expected) {
        assertThat(DropNames.safe(wanted)).isEqualTo(expected);
    }

    /** U+20000, a letter outside of the basic plane, over the place where long names are cut. */
    @Test
    void a_long_name_is_not_cut_within_a_letter() {
        String name = DropNames.safe("a".repeat(79) + "\uD840\uDC00" + "b");
        assertThat(name).isEqualTo("a".repeat(79));
        assertThat(Path.of(name).getNameCount()).isEqualTo(1);
    }

    @Property
    void any_name_becomes_one_safe_path_segment(@ForAll String wanted) {
        String name = DropNames.safe(wanted);

        assertThat(name)
                .isNotBlank()
                .doesNotContainPattern("[/\\\\:*?\"<>|\\p{Cc}]")
                .doesNotStartWith(".");
        assertThat(name).doesNotEndWith(".").doesNotEndWith(" ");
        assertThat(Path.of(name).getNameCount()).isEqualTo(1);
        assertThat(name.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(250);
    }

    @Property
    void names_handed_out_never_repeat(@ForAll String wanted) {
        DropNames names = new DropNames();

        assertThat(names.unique(wanted).toLowerCase(Locale.ROOT))
                .isNotEqualTo(names.unique(wanted).toLowerCase(Locale.ROOT));
    }
}
