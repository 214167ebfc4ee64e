package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Barrels of facets that are narrower than their slab is thick: the ends of such a slab are wider than a facet, and yet
 * no roof. Invented; 12 m radius, facets of 0.25 m, figures by the formulas of the circle.
 */
class NarrowFacetsTest {
    private static final double RADIUS = 12;
    private static final double WIDTH = 0.25;
    private static final double STEP = WIDTH / RADIUS;

    /** At a radius; hanging roofs bend about an axis 24 m up. */
    private static Vector3D on(double x, double radius, double angle, boolean hanging) {
        return hanging
                ? p(x, radius * Math.sin(angle), 24 - radius * Math.cos(angle))
                : p(x, radius * Math.sin(angle), radius * Math.cos(angle));
    }

    private static List<ReadElement> slabs(int from, int to, double thickness) {
        List<ReadElement> slabs = new ArrayList<>();
        for (int i = from; i < to; i++) {
            slabs.add(RoofFixtures.slab(
                    "facet " + i,
                    thickness,
                    on(0, RADIUS, i * STEP, false),
                    on(8, RADIUS, i * STEP, false),
                    on(8, RADIUS, (i + 1) * STEP, false),
                    on(0, RADIUS, (i + 1) * STEP, false)));
        }
        return slabs;
    }

    /** One body: its section extruded along X, the ends cut square to the surface. */
    private static ReadElement body(int from, int to, double thickness, boolean hanging) {
        List<Vector3D> section = new ArrayList<>();
        for (int i = from; i <= to; i++) {
            section.add(on(0, RADIUS, i * STEP, hanging));
        }
        for (int i = to; i >= from; i--) {
            section.add(on(0, hanging ? RADIUS + thickness : RADIUS - thickness, i * STEP, hanging));
        }
        List<Vector3D> far = section.stream().map(q -> q.add(p(8, 0, 0))).toList();
        return RoofFixtures.element("body", "predefined type ROOF", RoofFixtures.prism(section, far));
    }

    private static void isOneCurvedPlane(List<ReadElement> elements, int facets) {
        Roof roof = Roofs.layOut(elements, List.of(), settings(0.5));

        assertThat(roof.unplaced()).isEmpty();
        assertThat(roof.planes()).singleElement().satisfies(layout -> {
            assertThat(layout.plane().curve()).isPresent();
            assertThat(layout.plane().area()).isCloseTo(8 * WIDTH * facets, within(0.02));
        });
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.6, 1, 1.3, 1.8, 2.4, 3})
    void slabs_of_one_facet_each_are_one_barrel(double ratio) {
        isOneCurvedPlane(slabs(-24, 24, ratio * WIDTH), 48);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.6, 1, 1.3, 1.8, 2.4, 3})
    void slabs_of_one_facet_each_are_one_flank_of_a_barrel_up_to_steep_pitches(double ratio) {
        isOneCurvedPlane(slabs(12, 60, ratio * WIDTH), 48);
    }

    @ParameterizedTest
    @CsvSource({"-24, 24", "8, 40", "-50, -10"})
    void one_body_is_one_barrel(int from, int to) {
        for (double ratio : new double[] {0.3, 0.6, 1, 1.3, 1.8, 2.4, 3}) {
            isOneCurvedPlane(List.of(body(from, to, ratio * WIDTH, false)), to - from);
        }
    }

    @ParameterizedTest
    @CsvSource({"-24, 24", "8, 40"})
    void one_body_is_one_hanging_roof(int from, int to) {
        for (double ratio : new double[] {0.3, 0.6, 1, 1.3, 1.8, 2.4, 3}) {
            isOneCurvedPlane(List.of(body(from, to, ratio * WIDTH, true)), to - from);
        }
    }
}
