package runtrue.roof.halls;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.roof.Interval;
import runtrue.roof.PlaneLayout;
import runtrue.roof.bearing.BearingKind;
import runtrue.roof.bearing.LineFault;
import runtrue.roof.bearing.Standing;
import runtrue.roof.bearing.TruePlane;
import tools.jackson.databind.JsonNode;

/** True planes, proud items and lines cut short, against what the halls' truth files state by construction. */
class HallsBearingTest {
    private static final Offset<Double> TENTH_OF_A_MILLIMETRE = within(1e-4);
    private static final Offset<Double> MILLIMETRE = within(1e-3);

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void every_support_lies_as_far_off_the_contact_plane_as_it_was_designed_and_no_other_does(String name) {
        Hall hall = Hall.read(name, 1.0);

        for (JsonNode truth : hall.truePlanes()) {
            TruePlane found = hall.match(truth).bearing().truePlane().orElseThrow();
            Set<String> designed = new HashSet<>();
            for (JsonNode line : truth.get("supportLines")) {
                for (JsonNode piece : line.get("pieces")) {
                    String id = piece.get("globalId").asString();
                    double expected = piece.get("offPlane").asDouble();
                    if (line.get("isSupport").asBoolean()) {
                        designed.add(id);
                        assertThat(found.deviations())
                                .as(id)
                                .filteredOn(d -> d.piece().element().globalId().equals(id))
                                .singleElement()
                                .satisfies(d -> {
                                    assertThat(d.atFrom()).isCloseTo(expected, TENTH_OF_A_MILLIMETRE);
                                    assertThat(d.atTo()).isCloseTo(expected, TENTH_OF_A_MILLIMETRE);
                                });
                    }
                }
            }
            assertThat(found.deviations())
                    .extracting(d -> d.piece().element().globalId())
                    .as("supports of " + truth.get("id"))
                    .containsExactlyInAnyOrderElementsOf(designed);
        }
    }

    @Test
    void a_purlin_twelve_millimetres_low_is_a_step_of_twelve_millimetres_to_both_neighbours_and_no_twist() {
        Hall hall = Hall.read("karrowby", 1.0);
        TruePlane b = hall.match(hall.truePlanes().get(1)).bearing().truePlane().orElseThrow();

        assertThat(b.worst().line()).isEqualTo(3);
        assertThat(b.deviation()).isCloseTo(0.012, TENTH_OF_A_MILLIMETRE);
        assertThat(b.step()).hasValueCloseTo(0.012, TENTH_OF_A_MILLIMETRE);
        assertThat(b.twist()).hasValueCloseTo(0.0, TENTH_OF_A_MILLIMETRE);
        assertThat(b.steps())
                .filteredOn(s -> s.height() > 0.006)
                .extracting(s -> s.lower() + " to " + s.upper())
                .containsOnly("2 to 3", "3 to 4");
    }

    @ParameterizedTest
    @CsvSource({"karrowby, 0.16", "brandmoor, 0.12", "ossolaro, 0.13", "twinfall, 0.139467", "overmere, 0.10"})
    void supports_lie_at_the_stated_depth_of_the_build_up(String name, double depth) {
        Hall hall = Hall.read(name, 1.0, depth);

        // A folded sheet's skin may be taken anywhere from its pan to its crest: its ribs are 40 mm deep.
        double fold = name.equals("brandmoor") ? 0.04 : 1e-4;
        for (PlaneLayout layout : hall.roof().planes()) {
            assertThat(layout.bearing().truePlane().orElseThrow().gap()).hasValueCloseTo(0.0, within(fold));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void what_stands_proud_is_found_with_its_height_and_place_and_nothing_else_is(String name) {
        Hall hall = Hall.read(name, 1.0);

        int count = 0;
        for (JsonNode truth : hall.truePlanes()) {
            PlaneLayout layout = hall.match(truth);
            for (JsonNode proud : hall.truth().get("proud")) {
                if (proud.get("plane").asString().equals(truth.get("id").asString())) {
                    count++;
                    assertThat(layout.bearing().proud())
                            .filteredOn(n -> n.element()
                                    .globalId()
                                    .equals(proud.get("globalId").asString()))
                            .singleElement()
                            .satisfies(n -> {
                                assertThat(n.above())
                                        .isCloseTo(proud.get("proudBy").asDouble(), TENTH_OF_A_MILLIMETRE);
                                assertMiddle(n.u(), proud.get("u"), proud.get("across"));
                                assertMiddle(n.v(), proud.get("v"), proud.get("alongFall"));
                            });
                }
            }
        }
        assertThat(count).isEqualTo(hall.truth().get("proud").size());
        assertThat(hall.roof().planes())
                .flatExtracting(l -> l.bearing().near())
                .filteredOn(n -> n.standing() == Standing.PROUD || n.standing() == Standing.THROUGH)
                .hasSize(count);
    }

    private static void assertMiddle(Interval found, JsonNode middle, JsonNode size) {
        assertThat((found.from() + found.to()) / 2).isCloseTo(middle.asDouble(), MILLIMETRE);
        assertThat(found.length()).isCloseTo(size.asDouble(), MILLIMETRE);
    }

    @Test
    void a_member_named_as_a_purlin_thirty_millimetres_low_is_listed_as_off_level_by_that() {
        Hall hall = Hall.read("brandmoor", 1.0);

        assertThat(hall.roof().planes().get(0).bearing().near())
                .filteredOn(n -> n.standing() == Standing.OFF_LEVEL)
                .singleElement()
                .satisfies(n -> {
                    assertThat(n.element().name()).isEqualTo("Traufpfette");
                    assertThat(n.above()).isCloseTo(-0.03, TENTH_OF_A_MILLIMETRE);
                });
    }

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void the_halls_roofs_are_carried_by_purlins(String name) {
        assertThat(Hall.read(name, 1.0).roof().planes())
                .allSatisfy(l -> assertThat(l.bearing().kind()).isEqualTo(BearingKind.PURLINS));
    }

    @Test
    void a_purlin_that_stops_short_is_told_of_where_it_does() {
        Hall hall = Hall.read("twinfall", 1.0);
        PlaneLayout a = hall.match(hall.truePlanes().get(0));

        // The third bay from the plane's u = 0 ends at 18.288; the purlin stops 1.2 m before that.
        assertThat(a.bearing().faults()).singleElement().satisfies(f -> {
            assertThat(f.line()).isEqualTo(5);
            assertThat(f.kind()).isEqualTo(LineFault.Kind.MISSING);
            assertThat(f.u().length()).isCloseTo(1.2, within(0.02));
        });
    }

    @Test
    void a_purlin_that_is_missing_in_a_bay_is_told_of_where_it_is() {
        Hall hall = Hall.read("karrowby", 1.0);
        PlaneLayout a = hall.match(hall.truePlanes().get(0));

        assertThat(a.bearing().faults()).singleElement().satisfies(f -> {
            assertThat(f.line()).isEqualTo(4);
            assertThat(f.kind()).isEqualTo(LineFault.Kind.MISSING);
        });
    }

    @Test
    void a_bay_at_its_own_spacing_is_missing_none_of_its_neighbours_lines() {
        assertThat(Hall.read("overmere", 1.0).roof().planes().get(0).bearing().faults())
                .isEmpty();
    }
}
