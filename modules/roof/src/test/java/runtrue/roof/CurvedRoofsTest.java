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

    /** Published formulas of the circle: arc = radius x angle, chord = 2 radius sin(angle / 2). */
    @Test
    void facets_of_a_barrel_make_one_plane_with_the_arcs_length_area_and_pitches() {
        Roof roof = Roofs.layOut(barrel(2, 8), List.of(), settings(0.5));

        assertThat(roof.unplaced()).isEmpty();
        assertThat(roof.planes()).singleElement().satisfies(layout -> {
            RoofPlane plane = layout.plane();
            double arc = 30 * Math.toRadians(32);
            assertThat(plane.area()).isCloseTo(arc * 12, within(1e-5));
            assertThat(plane.planArea()).isCloseTo(2 * 30 * Math.sin(Math.toRadians(16)) * 12, within(1e-5));
            assertThat(Math.toDegrees(plane.pitch())).isCloseTo(16, within(1e-6));
            assertThat(plane.ridgeLevel()).isCloseTo(30, within(1e-6));
            assertThat(plane.azimuth()).isEmpty();
            assertThat(plane.elements()).hasSize(16);
            assertThat(plane.name()).isEqualTo("Hall / curved plane");
            assertThat(plane.remarks())
                    .anySatisfy(r -> assertThat(r)
                            .contains("16 facets that fall at 1.00 to 15.00 degrees")
                            .contains("circle of 30.000 m radius"));
            assertThat(layout.sheets())
                    .hasSize(24)
                    .allSatisfy(s -> assertThat(s.length()).isCloseTo(arc, within(1e-5)));
        });
    }

    @Test
    void a_barrel_that_ends_at_its_crown_falls_to_one_side() {
        List<ReadElement> half = barrel(2, 8).subList(0, 8);

        RoofPlane plane =
                Roofs.layOut(half, List.of(), settings(0.5)).planes().get(0).plane();

        // The facets run from y = -8.27 m, z = 28.84 m up to the crown: water runs towards -Y.
        assertThat(plane.azimuth()).hasValueCloseTo(Math.PI, within(1e-9));
        assertThat(plane.name()).isEqualTo("Hall / south curved plane");
        assertThat(plane.at(0, 0).getZ()).isCloseTo(30 * Math.cos(Math.toRadians(16)), within(1e-6));
        assertThat(Roofs.layOut(half, List.of(), settings(0.5)).edges())
                .extracting(RoofEdge::kind)
                .containsExactlyInAnyOrder(EdgeKind.EAVE, EdgeKind.HEAD, EdgeKind.VERGE, EdgeKind.VERGE);
    }

    @Test
    void a_curved_section_that_is_no_circle_says_so_and_measures_along_its_facets() {
        double[][] ellipse = new double[9][];
        for (int i = 0; i < 9; i++) {
            double t = Math.toRadians(50 + 10 * i);
            ellipse[i] = new double[] {-12 * Math.cos(t), 6 * Math.sin(t)};
        }
        List<ReadElement> slabs = new ArrayList<>();
        double length = 0;
        for (int i = 0; i + 1 < ellipse.length; i++) {
            double[] a = ellipse[i];
            double[] b = ellipse[i + 1];
            slabs.add(slab("e" + i, 0.1, p(9, a[0], a[1]), p(9, b[0], b[1]), p(0, b[0], b[1]), p(0, a[0], a[1])));
            length += Math.hypot(b[0] - a[0], b[1] - a[1]);
        }

        Roof roof = Roofs.layOut(slabs, List.of(), settings(0.5));

        RoofPlane plane = roof.planes().get(0).plane();
        assertThat(plane.curve().orElseThrow().radius()).isEmpty();
        assertThat(plane.remarks()).anySatisfy(r -> assertThat(r).contains("not circular"));
        assertThat(roof.planes().get(0).longestRun()).isCloseTo(length, within(1e-5));
    }

    /** Part of a cone whose sides fall at 11.31 degrees: 1 m in 5 m. */
    private static List<ReadElement> cone(int facets, double turn) {
        List<ReadElement> slabs = new ArrayList<>();
        for (int i = 0; i < facets; i++) {
            double a = Math.toRadians(turn * i);
            double b = Math.toRadians(turn * (i + 1));
            slabs.add(slab(
                    "cone " + i,
                    0.1,
                    p(8 * Math.cos(a), 8 * Math.sin(a), 4),
                    p(8 * Math.cos(b), 8 * Math.sin(b), 4),
                    p(3 * Math.cos(b), 3 * Math.sin(b), 5),
                    p(3 * Math.cos(a), 3 * Math.sin(a), 5)));
        }
        return slabs;
    }

    @Test
    void a_conical_roof_is_set_aside_as_such_with_its_pitch() {
        Roof roof = Roofs.layOut(cone(12, 10), List.of(), settings(0.5));

        assertThat(roof.planes()).isEmpty();
        assertThat(roof.unplaced())
                .hasSize(12)
                .allSatisfy(u -> assertThat(u.reason())
                        .startsWith("curved roof of 12 facets")
                        .contains("conical")
                        .contains("11.4 to 11.4 degrees"));
    }

    @Test
    void a_roof_over_twelve_sides_keeps_its_planes_and_hips() {
        assertThat(Roofs.layOut(cone(12, 30), List.of(), settings(0.5)).planes())
                .hasSize(12)
                .allSatisfy(l -> assertThat(l.plane().curve()).isEmpty());
    }

    @Test
    void a_dome_is_set_aside_with_its_radius_and_gives_no_sheets() {
        List<ReadElement> slabs = new ArrayList<>();
        for (int ring = 1; ring < 5; ring++) {
            for (int i = 0; i < 36; i++) {
                slabs.add(slab(
                        "dome " + ring + " " + i,
                        0.05,
                        dome(ring + 1, i),
                        dome(ring + 1, i + 1),
                        dome(ring, i + 1),
                        dome(ring, i)));
            }
        }

        Roof roof = Roofs.layOut(slabs, List.of(), settings(0.5));

        assertThat(roof.planes()).isEmpty();
        assertThat(roof.unplaced())
                .hasSize(144)
                .allSatisfy(u -> assertThat(u.reason())
                        .startsWith("curved roof of 144 facets")
                        .contains("a dome of 10.00 m radius"));
    }

    private static Vector3D dome(int ring, int i) {
        double down = Math.toRadians(8 * ring);
        double round = Math.toRadians(10 * i);
        return p(10 * Math.sin(down) * Math.cos(round), 10 * Math.sin(down) * Math.sin(round), 10 * Math.cos(down));
    }

    @Test
    void a_flat_plane_below_a_barrel_shares_the_edge_with_the_barrel() {
        List<ReadElement> slabs = new ArrayList<>(barrel(2, 8));
        double y = 30 * Math.sin(Math.toRadians(16));
        double z = 30 * Math.cos(Math.toRadians(16));
        double low = z - 5 * Math.tan(Math.toRadians(40));
        slabs.add(slab("apron", 0.1, p(0, y, z), p(12, y, z), p(12, y + 5, low), p(0, y + 5, low)));

        Roof roof = Roofs.layOut(slabs, List.of(), settings(0.5));

        assertThat(roof.planes()).hasSize(2);
        assertThat(roof.bodies()).hasSize(1);
        assertThat(roof.edges())
                .extracting(RoofEdge::kind)
                .containsExactlyInAnyOrder(
                        EdgeKind.PITCH_CHANGE,
                        EdgeKind.EAVE,
                        EdgeKind.EAVE,
                        EdgeKind.VERGE,
                        EdgeKind.VERGE,
                        EdgeKind.VERGE,
                        EdgeKind.VERGE);
        assertThat(roof.edges())
                .filteredOn(e -> e.kind() == EdgeKind.PITCH_CHANGE)
                .singleElement()
                .satisfies(e -> {
                    assertThat(e.planes()).hasSize(2);
                    assertThat(e.length()).isCloseTo(12, within(1e-3));
                    assertThat(e.angle()).hasValueCloseTo(Math.toRadians(40 - 16), within(1e-4));
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
                .allSatisfy(u -> assertThat(u.reason())
                        .startsWith("curved roof of 36 facets")
                        .contains("curved both ways"));
    }

    private static Vector3D shell(int i, int k) {
        return p(2 * i, k, 5 + 0.4 * k - 0.06 * k * k - 0.03 * (i - 3) * (i - 3) + 0.05 * i * k);
    }
}
