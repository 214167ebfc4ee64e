package runtrue.rules.needs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runtrue.ids.IdsDocument;
import runtrue.ids.Requirement;
import runtrue.ids.Requirement.Cardinality;
import runtrue.ids.Specification;
import runtrue.rules.RuleSet;
import runtrue.rules.RuleSets;
import runtrue.rules.cel.FactCatalogue;
import runtrue.rules.cel.FactSpec;
import runtrue.rules.read.Bundled;

class ModelNeedsTest {
    /** Drops' names and counts of files are of no model, system and settings are files of their own. */
    private static final Set<String> NOT_OF_MODELS =
            Set.of("drop.name", "drop.files", "drop.has_true_north", "plane.name", "plane.id");

    @TempDir
    Path folder;

    private RuleSet rules(String rule) throws IOException {
        Path file = folder.resolve("mine.yaml");
        Files.writeString(file, """
                rule_set: mine
                version: "1.0.0"
                title: Mine
                rules:
                  - id: a-rule
                    title: A rule
                    severity: note
                    source: test
                    message: test
                """ + rule.indent(4));
        return RuleSets.load(file);
    }

    private static IdsDocument needs(RuleSet rules) {
        return ModelNeeds.of(rules, Optional.empty());
    }

    private static List<String> names(IdsDocument document) {
        return document.specifications().stream().map(Specification::name).toList();
    }

    private static final Requirement.Property PITCH =
            new Requirement.Property("Pset_SlabCommon", "PitchAngle", "IfcPlaneAngleMeasure");

    private static List<Requirement> all(IdsDocument document) {
        return document.specifications().stream()
                .flatMap(s -> s.requirements().stream())
                .toList();
    }

    @Test
    void the_rules_of_the_program_need_roofs_and_supports_and_say_how_stated_values_are_meant() {
        IdsDocument document = needs(RuleSets.bundled("long-run-sheets"));
        assertThat(names(document)).contains("Roof elements", "Roof slabs", "Supports");
        assertThat(document.version()).startsWith("long-run-sheets ");
        assertThat(all(document)).anySatisfy(r -> {
            assertThat(r.facet()).isEqualTo(PITCH);
            assertThat(r.cardinality()).isEqualTo(Cardinality.OPTIONAL);
        });
    }

    @Test
    void what_no_rule_reads_is_not_asked_for() throws IOException {
        IdsDocument document = needs(rules("for: plane\nrequire: plane.pitch > 0"));
        assertThat(names(document)).contains("Roof elements").doesNotContain("Supports", "Members", "Grid");
        assertThat(all(document)).extracting(Requirement::facet).doesNotContain(PITCH);
    }

    @Test
    void a_rule_of_ones_own_brings_its_needs_along() throws IOException {
        IdsDocument document = needs(rules("for: drop\nrequire: drop.has_grid"));
        assertThat(document.specifications()).singleElement().satisfies(s -> {
            assertThat(s.entities()).containsExactly("IfcGrid");
            assertThat(s.needed()).isTrue();
            assertThat(s.description()).isEqualTo("For A rule.");
        });
    }

    @Test
    void bodies_are_asked_for_in_words_since_the_standard_has_no_facet_for_them() throws IOException {
        assertThat(needs(rules("for: plane\nrequire: plane.pitch > 0")).description())
                .contains("IDS has no way to ask for bodies");
        assertThat(needs(rules("for: drop\nrequire: drop.has_grid")).description())
                .doesNotContain("bodies");
    }

    @Test
    void rules_that_read_nothing_of_models_have_no_needs() throws IOException {
        RuleSet rules = rules("for: drop\nrequire: settings.rolled_on_site");
        assertThatThrownBy(() -> needs(rules)).hasMessageContaining("read nothing that a model states");
    }

    /** A new fact needs a word on what it rests on in a model. */
    @Test
    void every_fact_that_comes_from_models_has_an_entry() {
        Set<String> facts = FactCatalogue.standard().all().stream()
                .map(FactSpec::name)
                .filter(name -> !name.startsWith("system.") && !name.startsWith("settings."))
                .filter(name -> !NOT_OF_MODELS.contains(name))
                .collect(Collectors.toSet());
        assertThat(ModelNeeds.without(Bundled.file("needs", "model-information"), facts))
                .isEmpty();
    }

    @Test
    void a_misspelt_fact_is_told_with_its_place() throws IOException {
        Path file = Files.writeString(
                folder.resolve("info.yaml"),
                Bundled.file("needs", "model-information").text().replace("[drop.has_grid]", "[drop.has_gird]"));
        assertThatThrownBy(() -> ModelNeeds.of(RuleSets.bundled("long-run-sheets"), Optional.of(file)))
                .hasMessageMatching(
                        "(?s).*info.yaml:\\d+:13: unknown fact \"drop.has_gird\"; did you mean \"drop.has_grid\"\\?.*");
    }
}
