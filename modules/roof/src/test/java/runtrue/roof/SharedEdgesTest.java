package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Planes that adjoin along an edge where their line of intersection is of no help; invented. */
class SharedEdgesTest {
    /** Two triangles over one rectangle, folded along its diagonal by a fraction of a degree. */
    private static List<ReadElement> foldedAlongTheDiagonal(double lift) {
        return List.of(
                slab("low", 0.1, p(0, 0, 3), p(8, 0, 3), p(8, 6, 4)),
                slab("high", 0.1, p(0, 0, 3), p(8, 6, 4), p(0, 6, 4 + lift)));
    }

    @Test
    void planes_folded_by_less_than_half_a_degree_share_their_oblique_edge_once() {
        Roof roof = Roofs.layOut(foldedAlongTheDiagonal(0.03), List.of(), settings(0.5));

        assertThat(roof.planes()).hasSize(2);
        assertThat(roof.edges())
                .filteredOn(e -> e.planes().size() == 2)
                .singleElement()
                .satisfies(e -> {
                    assertThat(e.kind()).isEqualTo(EdgeKind.PITCH_CHANGE);
                    assertThat(e.length()).isCloseTo(Math.sqrt(64 + 36 + 1), within(1e-9));
                    assertThat(Math.toDegrees(e.angle().orElseThrow())).isBetween(0.2, 0.5);
                });
        assertThat(PublishedRoofsTest.total(roof, EdgeKind.EAVE)).isCloseTo(8, within(1e-9));
        assertThat(PublishedRoofsTest.total(roof, EdgeKind.HEAD)).isCloseTo(8, within(1e-3));
        assertThat(PublishedRoofsTest.total(roof, EdgeKind.VERGE)).isCloseTo(2 * Math.hypot(6, 1), within(0.01));
    }

    @Test
    void a_sharper_fold_there_is_a_valley() {
        Roof roof = Roofs.layOut(foldedAlongTheDiagonal(0.3), List.of(), settings(0.5));

        assertThat(PublishedRoofsTest.total(roof, EdgeKind.VALLEY)).isCloseTo(Math.sqrt(101), within(1e-9));
    }

    @Test
    void planes_a_hands_breadth_apart_do_not_adjoin() {
        ReadElement east = slab("east", 0.1, p(5.1, 0, 3), p(9, 0, 3), p(9, 6, 4.01), p(5.1, 6, 4.01));
        ReadElement west = slab("west", 0.1, p(0, 0, 3), p(5, 0, 3), p(5, 6, 4), p(0, 6, 4));

        Roof roof = Roofs.layOut(List.of(east, west), List.of(), settings(0.5));

        assertThat(roof.edges()).allSatisfy(e -> assertThat(e.planes()).hasSize(1));
    }
}
