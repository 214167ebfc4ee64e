package runtrue.rules.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.Element;
import runtrue.ifc.stated.AreaMeaning;
import runtrue.ifc.stated.StatedKind;
import runtrue.ifc.stated.StatedQuantity;
import runtrue.roof.stated.Mistake;
import runtrue.roof.stated.StatedValue;
import runtrue.rules.Judgement;
import runtrue.rules.Outcome;
import runtrue.rules.RoofSystems;
import runtrue.rules.RuleSets;
import runtrue.rules.SettingsFiles;
import runtrue.rules.Severity;

/** The bundled rules for what a model states of itself, with invented values. */
class StatedValuesTest {
    @ParameterizedTest
    @CsvSource({
        "PITCH, 0, 0.8727, 0.0087, DOES_NOT_CONFORM, stated-pitch",
        "PITCH, 0.8727, 0.8727, 0.0087, CONFORMS, stated-pitch",
        "AREA, 530.99, 92.96, 0.93, DOES_NOT_CONFORM, stated-area",
        "AREA, 93.5, 92.96, 0.93, CONFORMS, stated-area",
        "LENGTH, 7, 6, 0.1, DOES_NOT_CONFORM, stated-length",
        "LENGTH, 6.05, 6, 0.1, CONFORMS, stated-length",
        "THICKNESS, 0.231, 0.2, 0.002, DOES_NOT_CONFORM, stated-thickness",
        "THICKNESS, 0.2015, 0.2, 0.002, CONFORMS, stated-thickness",
    })
    void a_stated_value_conforms_within_its_tolerance(
            StatedKind kind, double stated, double derived, double tolerance, Outcome outcome, String rule) {
        List<Judgement> judged = judge(value("a", kind, stated, OptionalDouble.of(derived), tolerance, Mistake.NONE));

        assertThat(judged).singleElement().satisfies(j -> {
            assertThat(j.rule()).isEqualTo(rule);
            assertThat(j.outcome()).isEqualTo(outcome);
            assertThat(j.severity()).isEqualTo(Severity.NOTE);
            assertThat(j.elements()).extracting(Element::globalId).containsExactly("a");
        });
    }

    @Test
    void the_message_gives_both_values_and_names_the_mistake() {
        List<Judgement> judged =
                judge(value("a", StatedKind.PITCH, 0, OptionalDouble.of(Math.toRadians(50)), 0.01, Mistake.ZERO));

        assertThat(judged.get(0).message())
                .startsWith("Pset_SlabCommon.PitchAngle of IfcSlab \"slab a\" is 50 deg off the geometry")
                .contains("states 0 deg, and 50 deg is modelled (measured so)")
                .endsWith("It states 0: the authoring program exported a field that nobody filled in.");
    }

    @Test
    void what_cannot_be_compared_is_not_assessed_with_the_reason() {
        List<Judgement> judged = judge(value("a", StatedKind.THICKNESS, 0.2, OptionalDouble.empty(), 0, Mistake.NONE));

        assertThat(judged).singleElement().satisfies(j -> {
            assertThat(j.outcome()).isEqualTo(Outcome.NOT_ASSESSED);
            assertThat(j.reason()).isEqualTo("it is a surface");
            assertThat(j.message())
                    .isEqualTo(
                            "Pset_SlabCommon.PitchAngle of IfcSlab \"slab a\": not assessed, because it is a surface.");
        });
    }

    @Test
    void a_drop_that_states_nothing_gets_no_such_judgement() {
        assertThat(judge()).isEmpty();
    }

    @Test
    void one_kind_of_mistake_in_one_property_is_one_finding_with_all_its_elements() {
        List<Judgement> judged = judge(
                value("a", StatedKind.AREA, 531, OptionalDouble.of(93), 0.93, Mistake.WHOLE_ROOF),
                value("b", StatedKind.AREA, 531, OptionalDouble.of(40), 0.4, Mistake.WHOLE_ROOF),
                value("c", StatedKind.AREA, 50, OptionalDouble.of(40), 0.4, Mistake.NONE),
                value("d", StatedKind.AREA, 40, OptionalDouble.of(40), 0.4, Mistake.NONE));

        assertThat(judged)
                .extracting(Judgement::subject)
                .containsExactlyInAnyOrder(
                        "Pset_SlabCommon.PitchAngle of 2 elements",
                        "Pset_SlabCommon.PitchAngle of IfcSlab \"slab c\"",
                        "Pset_SlabCommon.PitchAngle of IfcSlab \"slab d\"");
        Judgement both = judged.stream()
                .filter(j -> j.elements().size() == 2)
                .findFirst()
                .orElseThrow();
        assertThat(both.message()).contains("is up to 491 m2 off the geometry").contains("\"slab b\" states 531 m2");
        assertThat(judged).extracting(Judgement::id).doesNotHaveDuplicates();
    }

    private static List<Judgement> judge(StatedValue... values) {
        DropFacts drop =
                new DropFacts("demo", 1, List.of(), List.of(), List.of(), List.of(), false, false, List.of(values));
        return Judge.judge(
                        RuleSets.bundled("long-run-sheets"),
                        RoofSystems.bundled("kestrel-500"),
                        SettingsFiles.load(Optional.empty(), Optional.empty(), Map.of()),
                        TestRoofs.gentle().roof(),
                        drop)
                .stream()
                .filter(j -> j.rule().startsWith("stated-"))
                .toList();
    }

    private static StatedValue value(
            String id, StatedKind kind, double stated, OptionalDouble derived, double tolerance, Mistake mistake) {
        Element element = new Element(
                id,
                "hall.ifc",
                1,
                "IfcSlab",
                "",
                "",
                "slab " + id,
                "",
                "",
                "",
                "",
                "",
                "",
                List.of(),
                List.of(),
                Map.of());
        return new StatedValue(
                element,
                true,
                new StatedQuantity(kind, AreaMeaning.NONE, "Pset_SlabCommon.PitchAngle", stated, stated, true, false),
                stated,
                derived,
                "measured so",
                tolerance,
                mistake,
                derived.isPresent() ? "" : "it is a surface",
                List.of());
    }
}
