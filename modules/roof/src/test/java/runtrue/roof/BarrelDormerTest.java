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
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A barrel dormer on a plane, invented: the plane rises by one in two to the north from y = 0, z = 0; the barrel of 2 m
 * radius runs level to the north, from 20 to 160 degrees of its circle, its springing at z = 0. It meets the plane in an
 * ellipse, whose half axes are the radius and the radius times the square root of five.
 */
class BarrelDormerTest {
    private static final double RADIUS = 2;
    private static final double SPRING = Math.toRadians(20);

    /** The arc of the ellipse from springing to crown, by Simpson's rule over its parameter. */
    private static double ellipseArc(double radius) {
        int n = 1000;
        double sum = 0;
        for (int i = 0; i <= n; i++) {
            double angle = SPRING + (Math.PI / 2 - SPRING) * i / n;
            double speed = radius * Math.hypot(Math.sin(angle), Math.sqrt(5) * Math.cos(angle));
            sum += speed * (i == 0 || i == n ? 1 : i % 2 == 1 ? 4 : 2);
        }
        return sum * (Math.PI / 2 - SPRING) / (3 * n);
    }

    private static double x(double radius, double angle) {
        return radius * Math.cos(angle);
    }

    private static double z(double radius, double angle) {
        return radius * (Math.sin(angle) - Math.sin(SPRING));
    }

    private static double angle(int i, int facets) {
        return SPRING + (Math.PI - 2 * SPRING) * i / facets;
    }

    private static List<ReadElement> barrel(int facets) {
        List<ReadElement> slabs = new ArrayList<>();
        for (int i = 0; i < facets; i++) {
            double a = angle(i, facets);
            double b = angle(i + 1, facets);
            slabs.add(slab(
                    "facet " + i,
                    0.02,
                    p(x(RADIUS, b), -1, z(RADIUS, b)),
                    p(x(RADIUS, a), -1, z(RADIUS, a)),
                    p(x(RADIUS, a), 2 * z(RADIUS, a), z(RADIUS, a)),
                    p(x(RADIUS, b), 2 * z(RADIUS, b), z(RADIUS, b))));
        }
        return slabs;
    }

    private static Vector3D main(double x, double y) {
        return p(x, y, y / 2);
    }

    /** A plane from eaves to ridge, cut out under the barrel by one of a lesser radius in so many pieces; 0 for whole. */
    private static ReadElement plane(double inner, int pieces) {
        List<Vector3D> ring = new ArrayList<>(List.of(main(6, 0), main(6, 8), main(-6, 8), main(-6, 0)));
        for (int i = pieces; i >= 0 && pieces > 0; i--) {
            double angle = angle(i, pieces);
            ring.add(main(x(inner, angle), 2 * z(inner, angle)));
        }
        return slab("main", 0.1, ring.toArray(Vector3D[]::new));
    }

    private static Roof roof(int facets, ReadElement plane) {
        List<ReadElement> slabs = barrel(facets);
        slabs.add(plane);
        return Roofs.layOut(slabs, List.of(), settings(0.5));
    }

    @ParameterizedTest
    @CsvSource({"35, 1.6, 0, 0", "35, 1.6, 12, 0", "35, 1.7, 25, 0.06", "70, 1.6, 12, 0"})
    void its_valleys_are_as_long_as_the_arc_of_the_ellipse(int facets, double inner, int pieces, double mitre) {
        Roof roof = roof(facets, plane(inner, pieces));

        // Where the cut comes near, ends up to a joint's width are mitres that no edge counts.
        // With an odd number of facets the one over the crown belongs to one of the two.
        double arc = ellipseArc(RADIUS);
        double facet = RADIUS * (Math.PI - 2 * SPRING) / facets;
        assertThat(roof.planes()).hasSize(2);
        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.VALLEY))
                .hasSize(2)
                .allSatisfy(e -> assertThat(e.length()).isCloseTo(arc, within(facet + mitre)));
        assertThat(PublishedRoofsTest.total(roof, EdgeKind.VALLEY)).isCloseTo(2 * arc, within(0.002 * arc + 2 * mitre));
    }

    /** The sides of the cut are the other side of the valley, from the foot to the crown: no flashing of their own. */
    @ParameterizedTest
    @CsvSource({"1.6, 12", "1.7, 25", "1.6, 40"})
    void the_sides_of_the_cut_below_it_are_no_edges_of_their_own(double inner, int pieces) {
        Roof roof = roof(35, plane(inner, pieces));

        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.ABUTMENT)).isEmpty();
        assertThat(roof.edges())
                .filteredOn(e -> e.planes().size() == 1
                        && e.from().getY() > 0.1
                        && e.from().getY() < 7.9)
                .allSatisfy(e -> assertThat(Math.abs(e.from().getX())).isCloseTo(6, within(1e-6)));
    }

    @Test
    void an_upright_wall_beside_the_plane_stays_an_abutment() {
        // Ten metres farther a higher plane stands on a wall along the fall: no curve, no valley.
        List<ReadElement> slabs = barrel(35);
        slabs.add(plane(1.6, 12));
        slabs.add(slab("higher", 0.1, p(6.05, 0, 6), p(9, 0, 6), p(9, 8, 6.5), p(6.05, 8, 6.5)));
        Roof roof = Roofs.layOut(slabs, List.of(), settings(0.5));

        assertThat(PublishedRoofsTest.edges(roof, EdgeKind.ABUTMENT))
                .singleElement()
                .satisfies(e -> assertThat(e.length()).isCloseTo(8 * Math.sqrt(1.25), within(1e-6)));
    }
}
