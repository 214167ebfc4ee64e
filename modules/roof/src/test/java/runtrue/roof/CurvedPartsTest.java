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

/** A curved plane's arc is that of its own outline; invented barrels of radius 30 m, figures by the formulas of the circle. */
class CurvedPartsTest {
    private static final double RADIUS = 30;
    private static final double STEP = Math.toRadians(2);

    private static Vector3D on(double x, double step) {
        return p(x, RADIUS * Math.sin(step * STEP), RADIUS * Math.cos(step * STEP));
    }

    private static ReadElement facet(int i) {
        return slab("facet " + i, 0.1, on(0, i), on(12, i), on(12, i + 1), on(0, i + 1));
    }

    private static List<ReadElement> facets(int from, int to) {
        List<ReadElement> slabs = new ArrayList<>();
        for (int i = from; i < to; i++) {
            slabs.add(facet(i));
        }
        return slabs;
    }

    private static List<PlaneLayout> laidOut(List<ReadElement> slabs) {
        Roof roof = Roofs.layOut(slabs, List.of(), settings(0.5));
        assertThat(roof.unplaced()).isEmpty();
        return roof.planes();
    }

    /** A metre long, tilted 9 mm to either side of the circle: its normal is more than a degree out of square to the axis. */
    private static ReadElement askew() {
        double low = 1 - 0.009 / RADIUS;
        double high = 1 + 0.009 / RADIUS;
        return slab(
                "askew",
                0.1,
                on(0, 8).multiply(low),
                p(1, 0, 0).add(on(0, 8).multiply(high)),
                p(1, 0, 0).add(on(0, 9).multiply(high)),
                on(0, 9).multiply(low));
    }

    @Test
    void an_arc_is_as_long_as_its_longest_sheet_where_a_facet_beside_the_axis_ends_it() {
        List<ReadElement> slabs = new ArrayList<>(facets(-8, 8));
        slabs.add(askew());

        assertThat(laidOut(slabs)).singleElement().satisfies(layout -> {
            double arc = RADIUS * 17 * STEP;
            assertThat(layout.longestRun()).isCloseTo(arc, within(2e-3));
            assertThat(layout.plane().curve().orElseThrow().section().length()).isCloseTo(arc, within(2e-3));
            assertThat(Math.toDegrees(layout.plane().pitch())).isCloseTo(18, within(0.01));
        });
    }

    @Test
    void a_rooflight_along_the_crown_leaves_two_planes_with_an_arc_and_a_fall_each() {
        List<ReadElement> slabs = new ArrayList<>(facets(-10, -1));
        slabs.addAll(facets(1, 6));

        List<PlaneLayout> layouts = laidOut(slabs);

        assertThat(layouts).hasSize(2).allSatisfy(layout -> {
            RoofPlane plane = layout.plane();
            double facets = plane.elements().size();
            assertThat(layout.longestRun()).isCloseTo(RADIUS * facets * STEP, within(1e-5));
            assertThat(plane.curve().orElseThrow().section().length()).isCloseTo(layout.longestRun(), within(1e-9));
            assertThat(plane.azimuth()).hasValueCloseTo(plane.at(0, 0).getY() > 0 ? 0 : Math.PI, within(1e-9));
            assertThat(Math.toDegrees(plane.pitch())).isCloseTo(2 * facets + 2, within(1e-6));
            assertThat(Math.toDegrees(plane.curve().orElseThrow().leastPitch())).isCloseTo(2, within(1e-6));
            assertThat(plane.at(0, 0).getZ()).isCloseTo(plane.eaveLevel(), within(1e-6));
            assertThat(plane.remarks())
                    .anySatisfy(r -> assertThat(r)
                            .contains("curved plane of " + plane.elements().size() + " facets"));
        });
    }
}
