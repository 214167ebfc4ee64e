package runtrue.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FrontTest {
    private static final Pattern IMPORT = Pattern.compile("(?m)^import [^'\"]*from '(?:\\./)?([^']+)';$");

    static Stream<Front.Module> modules() {
        return Front.modules().stream();
    }

    static Stream<Front.Module> ours() {
        return modules()
                .filter(m -> !m.text().contains("three.js authors") && !m.name().startsWith("three"));
    }

    @ParameterizedTest
    @MethodSource("modules")
    void noModuleCanEndItsOwnBlock(Front.Module module) {
        assertThat(module.text()).doesNotContainIgnoringCase("</script").doesNotContain("<!--");
    }

    @ParameterizedTest
    @MethodSource("ours")
    void everyImportIsAModuleThatThePageCarries(Front.Module module) {
        Set<String> carried = modules().map(Front.Module::name).collect(Collectors.toSet());
        List<String> imported =
                IMPORT.matcher(module.text()).results().map(m -> m.group(1)).toList();
        assertThat(imported).allMatch(i -> i.equals("three") || carried.contains(i));
    }

    /** Texts reach the page as text nodes only. */
    @ParameterizedTest
    @MethodSource("ours")
    void noModuleOfOursMakesMarkupOfText(Front.Module module) {
        if (module.name().equals("OrbitControls.js") || module.name().startsWith("Line")) {
            return;
        }
        assertThat(module.text())
                .doesNotContain("innerHTML", "outerHTML", "insertAdjacentHTML", "document.write", "DOMParser", "eval(");
    }

    @Test
    void modulesHaveNamesOfTheirOwn() {
        assertThat(modules().map(Front.Module::name)).doesNotHaveDuplicates();
    }

    @Test
    void theLicenceOfTheLibraryComesAlong() {
        assertThat(Front.licence()).contains("The MIT License", "three.js authors");
    }

    @Test
    void aSlotThatIsNotKnownIsRefused() {
        assertThatThrownBy(() -> Template.parts("a {{nothing}} b")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theFrameUsesEverySlotOnce() {
        assertThat(Template.page()).extracting(Template.Part::slot).containsExactlyInAnyOrder(Template.Slot.values());
    }
}
