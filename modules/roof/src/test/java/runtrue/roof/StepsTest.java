package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Parallel planes at different heights, one in ten to the north; invented. Two slabs of 6 m by 5 m in plan each. */
class StepsTest {
    private static final double RUN = Math.hypot(5, 0.5);
    private static final Vector3D NORMAL = p(0, -0.1, 1).normalize();

    private static ReadElement raised(String id, double x, double y, double by) {
        Vector3D up = NORMAL.multiply(by);
        return slab(
                id,
                0.1,
                p(x, y, 3 + y / 10).add(up),
                p(x + 6, y, 3 + y / 10).add(up),
                p(x + 6, y + 5, 3.5 + y / 10).add(up),
                p(x, y + 5, 3.5 + y / 10).add(up));
    }

    private static Roof oneUpTheFall(double height) {
        return Roofs.layOut(List.of(raised("low", 0, 0, 0), raised("high", 0, 5, height)), List.of(), settings(0.5));
    }

    private static Map<EdgeKind, Double> lengths(Roof roof) {
        return roof.edges().stream()
                .collect(Collectors.groupingBy(RoofEdge::kind, Collectors.summingDouble(RoofEdge::length)));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.06, 0.15, 0.29})
    void a_step_across_the_fall_is_one_edge_of_both_planes_with_its_height(double height) {
        assertThat(PublishedRoofsTest.edges(oneUpTheFall(height), EdgeKind.STEP))
                .singleElement()
                .satisfies(e -> {
                    assertThat(e.planes()).hasSize(2);
                    assertThat(e.length()).isCloseTo(6, within(1e-9));
                    assertThat(e.step()).hasValueCloseTo(height, within(1e-9));
                    // Along the upper plane, from under which the flashing hangs.
                    assertThat(e.from().getZ()).isCloseTo(3.5 + height * NORMAL.getZ(), within(1e-9));
                });
    }

    @Test
    void a_step_along_the_fall_is_one_too_and_takes_the_verges_place() {
        Roof roof = Roofs.layOut(List.of(raised("west", 0, 0, 0.1), raised("east", 6, 0, 0)), List.of(), settings(0.5));

        assertThat(lengths(roof))
                .containsOnlyKeys(EdgeKind.STEP, EdgeKind.VERGE, EdgeKind.EAVE, EdgeKind.HEAD)
                .hasEntrySatisfying(EdgeKind.STEP, l -> assertThat(l).isCloseTo(RUN, within(1e-9)))
                .hasEntrySatisfying(EdgeKind.VERGE, l -> assertThat(l).isCloseTo(2 * RUN, within(1e-9)));
    }

    @Test
    void planes_that_lap_or_stand_a_little_apart_at_a_step_have_it_all_the_same() {
        for (double apart : new double[] {-0.15, 0.1}) {
            Roof roof = Roofs.layOut(
                    List.of(raised("low", 0, 0, 0), raised("high", 0, 5 + apart, 0.1)), List.of(), settings(0.5));

            assertThat(PublishedRoofsTest.edges(roof, EdgeKind.STEP)).hasSize(1);
        }
    }

    @Test
    void over_a_joint_sheets_go_on_and_there_is_no_step() {
        assertThat(PublishedRoofsTest.edges(oneUpTheFall(0.003), EdgeKind.STEP)).isEmpty();
    }

    @Test
    void over_a_rise_as_high_as_a_wall_the_lower_plane_has_an_abutment_and_the_upper_one_an_eave() {
        assertThat(lengths(oneUpTheFall(0.4)))
                .containsKeys(EdgeKind.ABUTMENT, EdgeKind.EAVE)
                .doesNotContainKey(EdgeKind.STEP);
    }

    /** Pitch changes fold; a step does not. */
    @ParameterizedTest
    @CsvSource({"0.6, true", "0.5, false"})
    void planes_that_fold_have_a_pitch_change(double rise, boolean folded) {
        Roof roof = Roofs.layOut(
                List.of(
                        raised("low", 0, 0, 0),
                        slab("high", 0.1, p(0, 5, 3.5), p(6, 5, 3.5), p(6, 10, 3.5 + rise), p(0, 10, 3.5 + rise))),
                List.of(),
                settings(0.5));

        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.PITCH_CHANGE)).hasSize(folded ? 1 : 0);
        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.STEP)).isEmpty();
    }

    /** The middle one of three could meet both; 4 mm are nearer than 18 mm. */
    @Test
    void of_two_planes_that_an_edge_could_be_shared_with_it_is_the_nearer() {
        ReadElement low = raised("low", 0, 0, 0);
        ReadElement far = slab("far", 0.1, p(0, 5, 3.518), p(6, 5, 3.518), p(6, 9, 4.5), p(0, 9, 4.5));
        ReadElement near = slab("near", 0.1, p(0, 5, 3.504), p(6, 5, 3.504), p(6, 9, 4.1), p(0, 9, 4.1));
        for (List<ReadElement> order : List.of(List.of(low, far, near), List.of(near, low, far))) {
            Roof roof = Roofs.layOut(order, List.of(), settings(0.5));

            String own = planeOf(roof, "low");
            assertThat(roof.edges())
                    .filteredOn(e -> e.planes().size() == 2 && e.planes().contains(own))
                    .singleElement()
                    .satisfies(e -> assertThat(e.planes()).contains(planeOf(roof, "near")));
        }
    }

    private static String planeOf(Roof roof, String element) {
        return roof.planes().stream()
                .map(PlaneLayout::plane)
                .filter(p -> p.elements().stream()
                        .anyMatch(e -> e.element().globalId().equals(element)))
                .map(RoofPlane::id)
                .findFirst()
                .orElseThrow();
    }
}
