package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CurvedRoofsTest {
    /** A barrel of radius 30 m, 12 m long, in facets of {@code step} degrees to either side of the crown. */
    private static List<ReadElement> barrel(double step, int facets) {
        List<ReadElement> slabs = new ArrayList<>();
        for (int i = -facets; i < facets; i++) {
            double a = Math.toRadians(step * i);
            double b = Math.toRadians(step * (i + 1));
            slabs.add(slab(
                    "facet " + i,
                    0.1,
                    p(0, 30 * Math.sin(a), 30 * Math.cos(a)),
                    p(12, 30 * Math.sin(a), 30 * Math.cos(a)),
                    p(12, 30 * Math.sin(b), 30 * Math.cos(b)),
                    p(0, 30 * Math.sin(b), 30 * Math.cos(b))));
        }
        return slabs;
    }

    @Test
    void facets_of_a_barrel_are_set_aside_with_a_reason_and_give_no_sheets() {
        Roof roof = Roofs.layOut(barrel(2, 8), List.of(), settings(0.5));

        assertThat(roof.planes()).isEmpty();
        assertThat(roof.unplaced())
                .hasSize(16)
                .allSatisfy(u -> assertThat(u.reason())
                        .startsWith("curved roof of 16 facets")
                        .contains("201.1 m2"));
    }

    @Test
    void a_flat_plane_below_a_barrel_keeps_the_edge_it_shared_with_the_barrel() {
        List<ReadElement> slabs = new ArrayList<>(barrel(2, 8));
        double y = 30 * Math.sin(Math.toRadians(16));
        double z = 30 * Math.cos(Math.toRadians(16));
        double low = z - 5 * Math.tan(Math.toRadians(40));
        slabs.add(slab("apron", 0.1, p(0, y, z), p(12, y, z), p(12, y + 5, low), p(0, y + 5, low)));

        Roof roof = Roofs.layOut(slabs, List.of(), settings(0.5));

        String apron = roof.planes().get(0).plane().id();
        assertThat(roof.planes()).hasSize(1);
        assertThat(roof.edges())
                .allSatisfy(e -> assertThat(e.planes()).containsExactly(apron))
                .extracting(RoofEdge::kind)
                .containsExactlyInAnyOrder(EdgeKind.PITCH_CHANGE, EdgeKind.EAVE, EdgeKind.VERGE, EdgeKind.VERGE);
        assertThat(roof.edges())
                .filteredOn(e -> e.kind() == EdgeKind.PITCH_CHANGE)
                .singleElement()
                .satisfies(e -> {
                    assertThat(e.length()).isCloseTo(12, within(1e-6));
                    assertThat(e.angle()).hasValueCloseTo(Math.toRadians(40 - 15), within(1e-6));
                });
    }

    @Test
    void a_mansard_is_not_taken_for_a_curve() {
        assertThat(Roofs.layOut(barrel(20, 2), List.of(), settings(0.5)).planes())
                .hasSize(4);
    }

    @Test
    void low_gables_in_a_row_are_not_taken_for_a_curve() {
        List<ReadElement> slabs = new ArrayList<>();
        for (int bay = 0; bay < 3; bay++) {
            double y = 20.0 * bay;
            slabs.add(slab("up " + bay, 0.1, p(0, y, 5), p(9, y, 5), p(9, y + 10, 5.6), p(0, y + 10, 5.6)));
            slabs.add(slab("down " + bay, 0.1, p(0, y + 10, 5.6), p(9, y + 10, 5.6), p(9, y + 20, 5), p(0, y + 20, 5)));
        }

        assertThat(Roofs.layOut(slabs, List.of(), settings(0.5)).planes()).hasSize(6);
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 5, 7})
    void a_low_hip_roof_is_not_taken_for_a_curve_though_all_its_folds_are_slight(double pitch) {
        List<ReadElement> hips = RoofFixtures.hipRoof(20, 10, Math.toRadians(pitch), 0.1);

        assertThat(Roofs.layOut(hips, List.of(), settings(0.5)).planes()).hasSize(4);
    }

    @Test
    void a_low_hip_roof_with_a_level_top_is_not_taken_for_a_curve() {
        List<ReadElement> slabs = List.of(
                slab("south", 0.1, p(0, 0, 5), p(20, 0, 5), p(16, 4, 5.3), p(4, 4, 5.3)),
                slab("east", 0.1, p(20, 0, 5), p(20, 12, 5), p(16, 8, 5.3), p(16, 4, 5.3)),
                slab("north", 0.1, p(20, 12, 5), p(0, 12, 5), p(4, 8, 5.3), p(16, 8, 5.3)),
                slab("west", 0.1, p(0, 12, 5), p(0, 0, 5), p(4, 4, 5.3), p(4, 8, 5.3)),
                slab("top", 0.1, p(4, 4, 5.3), p(16, 4, 5.3), p(16, 8, 5.3), p(4, 8, 5.3)));

        assertThat(Roofs.layOut(slabs, List.of(), settings(0.5)).planes()).hasSize(5);
    }

    @Test
    void a_low_gable_whose_pitch_changes_half_way_is_not_taken_for_a_curve() {
        List<ReadElement> slabs = List.of(
                slab("low south", 0.1, p(0, 0, 5), p(9, 0, 5), p(9, 5, 5.5), p(0, 5, 5.5)),
                slab("high south", 0.1, p(0, 5, 5.5), p(9, 5, 5.5), p(9, 10, 5.7), p(0, 10, 5.7)),
                slab("high north", 0.1, p(0, 10, 5.7), p(9, 10, 5.7), p(9, 15, 5.5), p(0, 15, 5.5)),
                slab("low north", 0.1, p(0, 15, 5.5), p(9, 15, 5.5), p(9, 20, 5), p(0, 20, 5)));

        assertThat(Roofs.layOut(slabs, List.of(), settings(0.5)).planes()).hasSize(4);
    }

    /** A surface that is curved both ways, in triangles: their folds slope, and those at the corners are on one side only. */
    @Test
    void triangles_of_a_shell_are_set_aside_together() {
        List<ReadElement> slabs = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            for (int k = 0; k < 3; k++) {
                slabs.add(slab("low " + i + k, 0.05, shell(i, k), shell(i + 1, k), shell(i + 1, k + 1)));
                slabs.add(slab("high " + i + k, 0.05, shell(i, k), shell(i + 1, k + 1), shell(i, k + 1)));
            }
        }

        Roof roof = Roofs.layOut(slabs, List.of(), settings(0.5));

        assertThat(roof.planes()).isEmpty();
        assertThat(roof.unplaced())
                .hasSize(36)
                .allSatisfy(u -> assertThat(u.reason()).startsWith("curved roof of 36 facets"));
    }

    private static Vector3D shell(int i, int k) {
        return p(2 * i, k, 5 + 0.4 * k - 0.06 * k * k - 0.01 * (i - 3) * (i - 3) + 0.05 * i * k);
    }
}
