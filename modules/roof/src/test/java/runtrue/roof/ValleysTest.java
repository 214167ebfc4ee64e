package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Sloping sides at which water arrives; invented. The main plane rises by one in two to the north; a dormer with slopes of
 * 45 degrees stands on it, so that its sides lie on it from (4, 0, 3) over (6, 4, 5) to (8, 0, 3).
 */
class ValleysTest {
    private static final double VALLEY = Math.sqrt(2 * 2 + 4 * 4 + 2 * 2);

    private static Vector3D main(double x, double y) {
        return p(x, y, 3 + y / 2);
    }

    private static Roof dormerOn(Vector3D... main) {
        return Roofs.layOut(
                List.of(
                        slab("main", 0.1, main),
                        slab("east slope", 0.1, p(6, 0, 5), p(8, 0, 3), p(6, 4, 5)),
                        slab("west slope", 0.1, p(4, 0, 3), p(6, 0, 5), p(6, 4, 5))),
                List.of(),
                settings(0.5));
    }

    private static void hasTwoValleysAndNoSlopingEave(Roof roof) {
        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.VALLEY)).hasSize(2).allSatisfy(e -> {
            assertThat(e.planes()).hasSize(2);
            assertThat(e.length()).isCloseTo(VALLEY, within(1e-6));
            assertThat(e.angle()).isPresent();
        });
        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.EAVE))
                .allSatisfy(e -> assertThat(e.from().getZ()).isCloseTo(e.to().getZ(), within(1e-9)));
    }

    @Test
    void a_dormer_on_a_plane_that_goes_on_below_it_has_valleys() {
        hasTwoValleysAndNoSlopingEave(dormerOn(main(0, 0), main(12, 0), main(12, 8), main(0, 8)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.5, 0.7})
    void a_dormer_on_a_plane_cut_back_below_it_has_the_same_valleys(double back) {
        Roof roof = dormerOn(
                main(0, 0),
                main(4 + back, 0),
                main(6, 4 - 2 * back),
                main(8 - back, 0),
                main(12, 0),
                main(12, 8),
                main(0, 8));

        hasTwoValleysAndNoSlopingEave(roof);
        assertThat(PublishedRoofsTest.total(roof, EdgeKind.EAVE)).isCloseTo(8 + 2 * back, within(1e-6));
    }

    @Test
    void a_plane_that_ends_short_of_the_valley_gutter_has_them_as_long_as_its_own_sides() {
        Roof roof = dormerOn(main(0, 0), main(3.5, 0), main(6, 5), main(8.5, 0), main(12, 0), main(12, 8), main(0, 8));

        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.VALLEY))
                .hasSize(2)
                .allSatisfy(e -> assertThat(e.length()).isCloseTo(2.5 * Math.sqrt(1 + 4 + 1), within(1e-6)));
    }

    @Test
    void a_plane_that_ends_farther_off_has_none() {
        Roof roof = dormerOn(main(0, 0), main(2.5, 0), main(6, 7), main(9.5, 0), main(12, 0), main(12, 8), main(0, 8));

        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.VALLEY)).isEmpty();
    }

    /** Two parallel planes beside a diagonal of their plan, one of them above the other's level. */
    private static final ReadElement BEHIND = slab("behind", 0.1, main(0, 0), main(8, 8), main(0, 8));

    @Test
    void a_sloping_side_against_a_step_up_is_an_abutment_and_the_step_has_a_head() {
        Vector3D step = p(0, -0.5, 1).normalize().multiply(0.35);
        ReadElement proud = slab(
                "proud",
                0.1,
                main(0, 0).add(step),
                main(8, 0).add(step),
                main(8, 8).add(step));

        Roof roof = Roofs.layOut(List.of(BEHIND, proud), List.of(), settings(0.5));

        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.ABUTMENT))
                .singleElement()
                .satisfies(e -> assertThat(e.length()).isCloseTo(12, within(1e-9)));
        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.HEAD))
                .anySatisfy(e -> assertThat(e.length()).isCloseTo(12, within(1e-9)));
    }

    @Test
    void a_sloping_side_with_nothing_beyond_is_an_eave_that_water_drips_from() {
        Roof roof = Roofs.layOut(List.of(BEHIND), List.of(), settings(0.5));

        assertThat(PublishedRoofsTest.total(roof, EdgeKind.EAVE)).isCloseTo(12, within(1e-9));
    }

    @Test
    void the_way_round_in_which_an_outline_is_drawn_changes_no_edge() {
        Vector3D[] ring = {main(0, 0), main(4.5, 0), main(6, 3), main(7.5, 0), main(12, 0), main(12, 8), main(0, 8)};
        // With a slab beside the main one the outline comes from an overlay, which runs it the other way.
        List<ReadElement> roofs = List.of(
                slab("main", 0.1, ring),
                slab("more", 0.1, main(12, 0), main(14, 0), main(14, 8), main(12, 8)),
                slab("east slope", 0.1, p(6, 0, 5), p(8, 0, 3), p(6, 4, 5)),
                slab("west slope", 0.1, p(4, 0, 3), p(6, 0, 5), p(6, 4, 5)));

        hasTwoValleysAndNoSlopingEave(Roofs.layOut(roofs, List.of(), settings(0.5)));
    }
}
