package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Jogs of an outline; invented, the bound of 0.1 m is common practice without a source. */
class ReturnsTest {
    private static final double SLOPED = Math.sqrt(1.25);

    private static Vector3D at(double x, double y) {
        return p(x, y, 3 + y / 2);
    }

    @ParameterizedTest
    @CsvSource({"0.02, 5", "0.08, 5", "0.12, 6"})
    void a_jog_in_the_eave_is_an_edge_of_its_own_only_when_long_enough_to_flash(double jog, int edges) {
        ReadElement slab = slab("slab", 0.1, at(0, 0), at(5, 0), at(5, jog), at(9, jog), at(9, 6), at(0, 6));

        Roof roof = Roofs.layOut(List.of(slab), List.of(), settings(0.5));

        assertThat(roof.edges()).hasSize(edges);
        double outline = roof.planes().get(0).plane().outline().getLength();
        assertThat(outline).isCloseTo(18 + 12 * SLOPED, within(1e-6));
        assertThat(roof.edges().stream().mapToDouble(RoofEdge::length).sum()).isCloseTo(outline, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0.02, 5.022361", "0.08, 5.089443", "0.12, 5"})
    void a_shorter_one_counts_with_the_longer_edge_beside_it(double jog, double eave) {
        ReadElement slab = slab("slab", 0.1, at(0, 0), at(5, 0), at(5, jog), at(9, jog), at(9, 6), at(0, 6));

        Roof roof = Roofs.layOut(List.of(slab), List.of(), settings(0.5));

        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.EAVE))
                .extracting(RoofEdge::length)
                .anySatisfy(l -> assertThat(l).isCloseTo(eave, within(1e-6)))
                .anySatisfy(l -> assertThat(l).isCloseTo(4, within(1e-9)));
    }

    @ParameterizedTest
    @CsvSource({"6", "24"})
    void short_sides_that_follow_a_curve_of_the_eave_stay(int sides) {
        Vector3D[] ring = new Vector3D[sides + 3];
        for (int i = 0; i <= sides; i++) {
            double turned = Math.PI / 2 * i / sides;
            ring[i] = at(8.9 + 0.1 * sides / 6 * Math.sin(turned), 0.1 * sides / 6 * (1 - Math.cos(turned)));
        }
        ring[sides + 1] = at(8.9 + 0.1 * sides / 6, 6);
        ring[sides + 2] = at(0, 6);
        Vector3D[] whole = new Vector3D[ring.length + 1];
        System.arraycopy(ring, 0, whole, 1, ring.length);
        whole[0] = at(0, 0);

        Roof roof = Roofs.layOut(List.of(slab("slab", 0.1, whole)), List.of(), settings(0.5));

        assertThat(roof.edges()).filteredOn(e -> e.length() < 0.1).hasSize(sides);
        assertThat(roof.edges().stream().mapToDouble(RoofEdge::length).sum())
                .isCloseTo(roof.planes().get(0).plane().outline().getLength(), within(1e-9));
    }
}
