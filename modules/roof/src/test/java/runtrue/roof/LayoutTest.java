package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.bar;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Planes, supports and spans of invented roofs with figures worked by hand. */
class LayoutTest {
    private static final double PITCH = Math.toRadians(6);
    private static final double COS = Math.cos(PITCH);
    private static final double SIN = Math.sin(PITCH);

    /** A point of a plane that rises to the north, v metres up the fall and w above its skin. */
    private static Vector3D at(double u, double v, double w) {
        return p(u, v * COS - w * SIN, v * SIN + w * COS);
    }

    private static ReadElement southPlane(double width, double run) {
        return slab("south", 0.16, at(0, 0, 0), at(width, 0, 0), at(width, run, 0), at(0, run, 0));
    }

    private static ReadElement purlin(String id, double from, double to, double v, double top) {
        return bar(id, 0.1, at(from, v, top), at(to, v, top), at(0, 0, 1).subtract(at(0, 0, 0)));
    }

    private static List<ReadElement> purlins(double width, double top, double... positions) {
        List<ReadElement> purlins = new ArrayList<>();
        for (double v : positions) {
            purlins.add(purlin("purlin " + v, 0, width, v, top));
        }
        return purlins;
    }

    @Test
    void a_slab_cut_square_to_its_plane_is_one_plane_without_its_cut_edges() {
        Roof roof = Roofs.layOut(List.of(southPlane(12, 8)), List.of(), settings(0.5));

        assertThat(roof.planes()).singleElement().satisfies(l -> {
            assertThat(l.plane().pitch()).isCloseTo(PITCH, within(1e-9));
            assertThat(l.plane().azimuth()).hasValueCloseTo(Math.PI, within(1e-9));
            assertThat(l.plane().area()).isCloseTo(96, within(1e-6));
            assertThat(l.plane().planArea()).isCloseTo(96 * COS, within(1e-6));
            assertThat(l.plane().thickness()).hasValueCloseTo(0.16, within(1e-9));
            assertThat(l.plane().name()).isEqualTo("Hall / south plane");
            assertThat(l.sheets())
                    .hasSize(24)
                    .allSatisfy(s -> assertThat(s.length()).isCloseTo(8, within(1e-6)));
        });
    }

    @Test
    void panels_with_joints_are_one_plane_and_their_areas_count_once() {
        ReadElement whole = southPlane(12, 8);
        ReadElement left = slab("left", 0.16, at(0, 0, 0), at(5.99, 0, 0), at(5.99, 8, 0), at(0, 8, 0));
        ReadElement right = slab("right", 0.16, at(6, 0, 0), at(12, 0, 0), at(12, 8, 0), at(6, 8, 0));

        for (List<ReadElement> roofs : List.of(List.of(left, right), List.of(whole, left, right))) {
            Roof roof = Roofs.layOut(roofs, List.of(), settings(0.5));
            assertThat(roof.planes()).singleElement().satisfies(l -> {
                assertThat(l.plane().area()).isCloseTo(96, within(1e-4));
                assertThat(l.plane().elements()).hasSize(roofs.size());
            });
        }
    }

    @Test
    void stacked_layers_are_one_plane_the_outermost() {
        ReadElement deck = slab("deck", 0.05, at(0, 0, -0.2), at(12, 0, -0.2), at(12, 8, -0.2), at(0, 8, -0.2));

        Roof roof = Roofs.layOut(List.of(deck, southPlane(12, 8)), List.of(), settings(0.5));

        assertThat(roof.planes())
                .singleElement()
                .satisfies(l -> assertThat(l.plane().elements())
                        .extracting(e -> e.element().globalId())
                        .containsExactly("south"));
        assertThat(roof.unplaced())
                .extracting(u -> u.element().element().globalId())
                .containsExactly("deck");
    }

    @Test
    void spans_are_measured_between_the_support_lines_and_to_the_edges() {
        Roof roof =
                Roofs.layOut(List.of(southPlane(12, 8)), purlins(12, -0.16, 0.3, 1.8, 3.3, 5.1, 7.6), settings(0.5));

        PlaneLayout layout = roof.planes().get(0);
        assertThat(layout.supports()).extracting(SupportLine::number).containsExactly(1, 2, 3, 4, 5);
        assertThat(lengths(layout, SpanKind.EAVE_OVERHANG)).containsExactly(0.3);
        assertThat(lengths(layout, SpanKind.END_SPAN)).containsExactly(1.5, 2.5);
        assertThat(lengths(layout, SpanKind.INTERNAL_SPAN)).containsExactly(1.5, 1.8);
        assertThat(lengths(layout, SpanKind.RIDGE_OVERHANG)).containsExactly(0.4);
    }

    @Test
    void a_purlin_missing_in_one_bay_is_a_long_span_there_and_nowhere_else() {
        List<ReadElement> members = new ArrayList<>(purlins(12, -0.16, 0.3, 1.8, 4.8, 6.3, 7.6));
        members.add(purlin("bay 1", 0, 4, 3.3, -0.16));
        members.add(purlin("bay 3", 8, 12, 3.3, -0.16));

        PlaneLayout layout = Roofs.layOut(List.of(southPlane(12, 8)), members, settings(0.5))
                .planes()
                .get(0);

        assertThat(layout.spans())
                .filteredOn(s -> s.length() > 2)
                .singleElement()
                .satisfies(s -> {
                    assertThat(s.length()).isCloseTo(3, within(1e-9));
                    assertThat(s.u().from()).isCloseTo(4, within(1e-9));
                    assertThat(s.u().to()).isCloseTo(8, within(1e-9));
                    assertThat(s.kind()).isEqualTo(SpanKind.INTERNAL_SPAN);
                });
    }

    @Test
    void eave_beams_below_the_contact_level_and_rafters_below_purlins_carry_no_sheet() {
        List<ReadElement> members = new ArrayList<>(purlins(12, -0.16, 0.3, 1.8, 3.3, 5.1, 7.6));
        members.add(purlin("eave beam", 0, 12, 0.05, -0.3));
        members.add(bar("rafter", 0.3, at(6, 0, -0.26), at(6, 8, -0.26), at(0, 0, 1)));

        PlaneLayout layout = Roofs.layOut(List.of(southPlane(12, 8)), members, settings(0.5))
                .planes()
                .get(0);

        assertThat(layout.supports()).hasSize(5);
    }

    @Test
    void rafters_directly_below_the_sheets_are_said_and_no_span_is_made_up() {
        List<ReadElement> members = new ArrayList<>(purlins(12, -0.4, 0.3, 4, 7.6));
        for (double u = 0.5; u < 12; u += 1) {
            members.add(bar("rafter " + u, 0.2, at(u, 0, -0.16), at(u, 8, -0.16), at(0, 0, 1)));
        }

        PlaneLayout layout = Roofs.layOut(List.of(southPlane(12, 8)), members, settings(0.5))
                .planes()
                .get(0);

        assertThat(layout.spans()).isEmpty();
        assertThat(layout.remarks()).singleElement().asString().contains("along the fall");
    }

    @Test
    void a_plane_without_members_says_that_none_was_found() {
        PlaneLayout layout = Roofs.layOut(List.of(southPlane(12, 8)), List.of(), settings(0.5))
                .planes()
                .get(0);

        assertThat(layout.supports()).isEmpty();
        assertThat(layout.remarks()).singleElement().asString().contains("no member lies across the fall");
    }

    @Test
    void the_order_of_elements_changes_nothing() {
        List<ReadElement> roofs = new ArrayList<>(RoofFixtures.hipRoof(20, 10, Math.toRadians(10), 0.2));
        List<ReadElement> members = new ArrayList<>(purlins(20, -0.2, 0.5, 2, 3.5));
        String one = Roofs.layOut(roofs, members, settings(0.5)).toString();
        Collections.reverse(roofs);
        Collections.reverse(members);

        assertThat(Roofs.layOut(roofs, members, settings(0.5)).toString()).isEqualTo(one);
    }

    @Test
    void eaves_that_face_each_other_across_a_gutter_are_box_gutter_edges() {
        Vector3D a = p(0, 0.4, 0);
        Roof roof = Roofs.layOut(
                List.of(
                        slab("north", 0.1, a, p(9, 0.4, 0), p(9, 6, 0.5), p(0, 6, 0.5)),
                        slab("south", 0.1, p(9, -0.4, 0), p(0, -0.4, 0), p(0, -6, 0.5), p(9, -6, 0.5))),
                List.of(),
                settings(0.5));

        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.BOX_GUTTER)).hasSize(2);
        assertThat(PublishedRoofsTest.total(roof, EdgeKind.HEAD)).isCloseTo(18, within(1e-9));
        assertThat(roof.bodies()).hasSize(1);
    }

    @Test
    void the_head_of_a_lean_to_below_a_higher_eave_is_an_abutment() {
        ReadElement hall = slab("hall", 0.1, p(9, 5.8, 4), p(0, 5.8, 4), p(0, 15, 5), p(9, 15, 5));
        ReadElement leanTo = slab("lean-to", 0.1, p(0, 0, 2.5), p(9, 0, 2.5), p(9, 6, 3), p(0, 6, 3));

        Roof roof = Roofs.layOut(List.of(hall, leanTo), List.of(), settings(0.5));

        assertThat(PublishedRoofsTest.total(roof, EdgeKind.ABUTMENT)).isCloseTo(9, within(1e-9));
        assertThat(PublishedRoofsTest.total(roof, EdgeKind.HEAD)).isCloseTo(9, within(1e-9));
        assertThat(PublishedRoofsTest.total(roof, EdgeKind.EAVE)).isCloseTo(18, within(1e-9));
    }

    private static List<Double> lengths(PlaneLayout layout, SpanKind kind) {
        return layout.spans().stream()
                .filter(s -> s.kind() == kind)
                .map(s -> Math.rint(s.length() * 1e6) / 1e6)
                .toList();
    }
}
