package runtrue.rules.judge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.ifc.Element;
import runtrue.roof.Interval;
import runtrue.roof.Roof;
import runtrue.roof.SupportEvidence;
import runtrue.roof.SupportLine;
import runtrue.roof.SupportPiece;
import runtrue.roof.bearing.Bearing;
import runtrue.roof.bearing.BearingKind;
import runtrue.roof.bearing.NearThing;
import runtrue.roof.bearing.Standing;
import runtrue.roof.bearing.TruePlanes;
import runtrue.rules.Judgement;
import runtrue.rules.Outcome;
import runtrue.rules.RoofSystem;
import runtrue.rules.RoofSystems;
import runtrue.rules.RuleSets;
import runtrue.rules.SettingsFiles;

/** A golden example of each outcome for the rules about true planes, with the bundled (invented) limits. */
class TruePlaneRulesTest {
    private static final RoofSystem SYSTEM = RoofSystems.bundled("kestrel-500");
    private static final Roof ROOF = TestRoofs.gentle().roof();

    private static List<Judgement> judge(String rule, Roof roof) {
        DropFacts drop = new DropFacts("demo", 1, List.of(), List.of(), false, false);
        return Judge.judge(
                        RuleSets.bundled("long-run-sheets"),
                        SYSTEM,
                        SettingsFiles.load(Optional.empty(), Optional.empty(), Map.of()),
                        roof,
                        drop)
                .stream()
                .filter(j -> j.rule().equals(rule))
                .toList();
    }

    /** Five lines of one piece, one of them off by so many millimetres at its ends. */
    private static Roof off(double millimetresFrom, double millimetresTo, OptionalDouble depth) {
        List<SupportLine> lines = new ArrayList<>();
        for (SupportLine line : ROOF.planes().get(0).supports()) {
            SupportPiece p = line.pieces().get(0);
            double from = line.number() == 3 ? millimetresFrom / 1000 : 0;
            double to = line.number() == 3 ? millimetresTo / 1000 : 0;
            SupportPiece moved = new SupportPiece(
                    p.element(),
                    SupportEvidence.TYPED,
                    p.uFrom(),
                    p.vFrom(),
                    p.uTo(),
                    p.vTo(),
                    p.contact() + from,
                    p.contact() + to,
                    p.flange(),
                    p.depth(),
                    p.thickness());
            lines.add(new SupportLine(line.id(), line.number(), line.v(), List.of(moved), line.extents()));
        }
        Bearing bearing = new Bearing(
                BearingKind.PURLINS,
                Optional.of(TruePlanes.of(lines, depth)),
                List.of(),
                List.of(),
                List.of(),
                List.of());
        return TestRoofs.with(ROOF, bearing);
    }

    @Test
    void supports_in_one_plane_conform_and_are_told_of_line_by_line() {
        assertThat(judge("supports-in-plane", ROOF))
                .hasSize(5)
                .allSatisfy(j -> assertThat(j.outcome()).isEqualTo(Outcome.CONFORMS));
    }

    @ParameterizedTest
    @CsvSource({"-12, -12, low, 12 mm", "0, 8, high, 8 mm", "-6, 2, low, 6 mm"})
    void a_support_off_the_plane_does_not_conform_and_is_named_with_its_cure(
            double from, double to, String side, String measured) {
        assertThat(judge("supports-in-plane", off(from, to, OptionalDouble.empty())))
                .filteredOn(j -> j.outcome() == Outcome.DOES_NOT_CONFORM)
                .singleElement()
                .satisfies(j -> {
                    assertThat(j.elements()).extracting(e -> e.globalId()).containsExactly("purlin3");
                    assertThat(j.message())
                            .isEqualTo("Piece 1 of support line 3 of plane south (Purlin 3) lies " + measured + " too "
                                    + side + " against the other supports; 5 mm is allowed.");
                    assertThat(j.cure()).startsWith("Pack a low support");
                });
    }

    /** It is in no support line, so that nothing else would speak of it. */
    @Test
    void a_purlin_that_lies_so_low_that_no_sheet_reaches_it_does_not_conform() {
        NearThing low = new NearThing(
                TestRoofs.element("low", "IfcMember", "Purlin 9"),
                Standing.OFF_LEVEL,
                -0.03,
                new Interval(0, 12),
                new Interval(2.9, 3));
        assertThat(judge("supports-in-plane", near(List.of(low), List.of())))
                .filteredOn(j -> j.outcome() == Outcome.DOES_NOT_CONFORM)
                .singleElement()
                .satisfies(j -> {
                    assertThat(j.elements()).extracting(e -> e.globalId()).containsExactly("low");
                    assertThat(j.message())
                            .isEqualTo("A member beside the supports of plane south (Purlin 9) lies 30 mm too low"
                                    + " against the other supports; 5 mm is allowed.");
                });
    }

    @Test
    void a_support_within_the_limit_conforms() {
        assertThat(judge("supports-in-plane", off(5, -5, OptionalDouble.empty())))
                .allSatisfy(j -> assertThat(j.outcome()).isEqualTo(Outcome.CONFORMS));
    }

    @ParameterizedTest
    @CsvSource({"supports-in-plane", "nothing-proud", "depth-to-supports"})
    void where_supports_were_not_measured_nothing_is_said_to_conform(String rule) {
        assertThat(judge(rule, TestRoofs.with(ROOF, Bearing.unknown())))
                .singleElement()
                .satisfies(j -> assertThat(j.outcome()).isEqualTo(Outcome.NOT_ASSESSED));
    }

    /** As on a curved plane, whose supports are found but not measured against its arc. */
    @Test
    void supports_that_were_not_measured_are_not_said_to_be_missing() {
        Bearing bearing = Bearing.untrue(BearingKind.PURLINS, List.of(), List.of(), List.of());
        assertThat(judge("supports-in-plane", TestRoofs.with(ROOF, bearing)))
                .singleElement()
                .satisfies(j -> {
                    assertThat(j.outcome()).isEqualTo(Outcome.NOT_ASSESSED);
                    assertThat(j.reason()).doesNotContain("no supports");
                });
    }

    @Test
    void a_plane_with_nothing_above_its_supports_conforms() {
        assertThat(judge("nothing-proud", ROOF))
                .singleElement()
                .satisfies(j -> assertThat(j.outcome()).isEqualTo(Outcome.CONFORMS));
    }

    /** The taller it is, the less it conforms: what passes right through the sheets too. */
    @ParameterizedTest
    @CsvSource({"PROUD, 0.018", "THROUGH, 0.32"})
    void what_stands_above_the_supports_never_conforms(Standing standing, double above) {
        NearThing plate = new NearThing(
                TestRoofs.element("plate", "IfcPlate", "Plate"),
                standing,
                above,
                new Interval(4, 4.2),
                new Interval(2.9, 3));
        assertThat(judge("nothing-proud", near(List.of(plate), List.of())))
                .extracting(j -> j.outcome())
                .containsExactly(Outcome.DOES_NOT_CONFORM);
    }

    @Test
    void beside_a_plate_that_could_not_be_read_nothing_is_said_to_be_free_of_such() {
        assertThat(judge("nothing-proud", near(List.of(), List.of(TestRoofs.element("plate", "IfcPlate", "Plate")))))
                .singleElement()
                .satisfies(j -> {
                    assertThat(j.outcome()).isEqualTo(Outcome.NOT_ASSESSED);
                    assertThat(j.reason()).contains("1 things near its supports were not read");
                });
    }

    private static Roof near(List<NearThing> things, List<Element> unread) {
        Bearing bearing = ROOF.planes().get(0).bearing();
        return TestRoofs.with(
                ROOF, new Bearing(bearing.kind(), bearing.truePlane(), things, unread, List.of(), List.of()));
    }

    @Test
    void a_plate_above_the_supports_does_not_conform_and_is_named_where_it_is() {
        NearThing plate = new NearThing(
                TestRoofs.element("plate", "IfcPlate", "Splice"),
                Standing.PROUD,
                0.015,
                new Interval(4, 4.2),
                new Interval(2.9, 3));
        Roof roof = near(List.of(plate), List.of());

        assertThat(judge("nothing-proud", roof)).singleElement().satisfies(j -> {
            assertThat(j.outcome()).isEqualTo(Outcome.DOES_NOT_CONFORM);
            assertThat(j.message())
                    .isEqualTo("IfcPlate \"Splice\" on plane south stands 15 mm above the supports' contact plane; 2 mm"
                            + " is allowed.");
            assertThat(j.elements()).extracting(e -> e.globalId()).containsExactly("plate");
            // 4.1 m across from the origin of the drop.
            assertThat(j.place().orElseThrow().getX()).isEqualTo(1004.1);
        });
    }

    @ParameterizedTest
    @CsvSource({"0.18, CONFORMS", "0.19, CONFORMS", "0.16, DOES_NOT_CONFORM", "0.2, DOES_NOT_CONFORM"})
    void the_stated_build_up_is_held_against_the_depth_to_the_supports(double stated, Outcome outcome) {
        assertThat(judge("depth-to-supports", off(0, 0, OptionalDouble.of(stated))))
                .singleElement()
                .satisfies(j -> assertThat(j.outcome()).isEqualTo(outcome));
    }

    @Test
    void without_a_stated_build_up_the_depth_to_the_supports_is_not_assessed() {
        assertThat(judge("depth-to-supports", off(0, 0, OptionalDouble.empty())))
                .singleElement()
                .satisfies(j -> {
                    assertThat(j.outcome()).isEqualTo(Outcome.NOT_ASSESSED);
                    assertThat(j.reason()).contains("build_up_depth");
                });
    }

    private static Roof besideUnread(Roof roof) {
        Bearing b = roof.planes().get(0).bearing();
        List<Element> unread = List.of(TestRoofs.element("x", "IfcBeam", "B1"));
        return TestRoofs.with(roof, new Bearing(b.kind(), b.truePlane(), b.near(), b.unread(), unread, b.faults()));
    }

    /**
     * Allowed are 5 mm. Beside an unread support the contact plane may lie anywhere: 10 mm apart, two supports may both be
     * 5 mm off it, 11 mm apart they cannot.
     */
    @ParameterizedTest
    @CsvSource({"-11, 1", "-10, 0", "-6, 0"})
    void a_difference_that_no_further_support_removes_is_found_beside_unread_ones(double millimetres, int found) {
        List<Judgement> judged =
                judge("supports-in-plane", besideUnread(off(millimetres, millimetres, OptionalDouble.empty())));

        assertThat(judged)
                .filteredOn(j -> j.outcome() == Outcome.DOES_NOT_CONFORM)
                .hasSize(found);
        assertThat(judged).extracting(j -> j.outcome()).doesNotContain(Outcome.CONFORMS);
    }

    private static NearThing thing(String id, Standing standing, double above) {
        return new NearThing(
                TestRoofs.element(id, "IfcPlate", id), standing, above, new Interval(4, 4.2), new Interval(2.9, 3));
    }

    @Test
    void beside_unread_supports_only_what_passes_right_through_is_sure_to_be_in_the_way() {
        Roof roof = besideUnread(
                near(List.of(thing("pipe", Standing.THROUGH, 0.3), thing("bolt", Standing.PROUD, 0.02)), List.of()));

        assertThat(judge("nothing-proud", roof))
                .extracting(j -> j.elements().get(0).globalId(), j -> j.outcome())
                .containsExactlyInAnyOrder(
                        tuple("pipe", Outcome.DOES_NOT_CONFORM), tuple("bolt", Outcome.NOT_ASSESSED));
    }

    /** The bolt stays found, and the plane is not said to be free of others. */
    @Test
    void an_unread_thing_takes_nothing_from_a_bolt_that_was_read() {
        Roof roof = near(
                List.of(thing("bolt", Standing.PROUD, 0.02)), List.of(TestRoofs.element("x", "IfcPlate", "Plate")));

        assertThat(judge("nothing-proud", roof))
                .extracting(j -> j.outcome())
                .containsExactlyInAnyOrder(Outcome.DOES_NOT_CONFORM, Outcome.NOT_ASSESSED);
    }

    @ParameterizedTest
    @CsvSource({"supports-in-plane", "nothing-proud", "depth-to-supports"})
    void no_rule_on_supports_conforms_beside_unread_ones(String rule) {
        assertThat(judge(rule, besideUnread(ROOF)))
                .isNotEmpty()
                .extracting(j -> j.outcome())
                .containsOnly(Outcome.NOT_ASSESSED);
    }
}
