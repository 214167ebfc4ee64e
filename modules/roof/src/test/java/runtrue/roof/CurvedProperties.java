package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.p;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.threed.rotation.QuaternionRotation;

/** What must hold for any barrel, however finely it is cut into facets and wherever it stands. */
class CurvedProperties {
    /** Facets from one angle to another (from the crown, towards +Y), along X, with purlins 0.1 m below their folds. */
    private record Barrel(double radius, double from, double to, double length, int facets) {
        List<ReadElement> slabs() {
            List<ReadElement> slabs = new ArrayList<>();
            for (int i = 0; i < facets; i++) {
                slabs.add(RoofFixtures.slab(
                        "facet " + i, 0.02, at(0, i), at(length, i), at(length, i + 1), at(0, i + 1)));
            }
            return slabs;
        }

        private double angle(double i) {
            return from + (to - from) * i / facets;
        }

        private Vector3D at(double x, double i) {
            return p(x, radius * Math.sin(angle(i)), radius * Math.cos(angle(i)));
        }

        double arc() {
            return radius * (to - from);
        }
    }

    private static List<ReadElement> moved(List<ReadElement> elements, double turn, Vector3D by) {
        QuaternionRotation rotation = QuaternionRotation.fromAxisAngle(Vector3D.Unit.PLUS_Z, turn);
        return elements.stream().map(e -> RoofFixtures.moved(e, rotation, by)).toList();
    }

    @Property(tries = 60)
    void area_and_run_are_those_of_the_circle_whatever_the_number_of_facets(
            @ForAll @DoubleRange(min = 6, max = 60) double radius,
            @ForAll @DoubleRange(min = -60, max = -5) double from,
            @ForAll @DoubleRange(min = 5, max = 60) double to,
            @ForAll @DoubleRange(min = 3, max = 40) double length,
            @ForAll @IntRange(min = 12, max = 40) int facets) {
        Barrel barrel = new Barrel(radius, Math.toRadians(from), Math.toRadians(to), length, facets);

        Roof roof = Roofs.layOut(barrel.slabs(), List.of(), RoofFixtures.settings(0.5));

        assertThat(roof.planes()).singleElement().satisfies(layout -> {
            RoofPlane plane = layout.plane();
            assertThat(plane.curve().orElseThrow().radius()).hasValueCloseTo(radius, within(1e-4 * radius));
            assertThat(plane.area()).isCloseTo(barrel.arc() * length, within(1e-4 * barrel.arc() * length));
            assertThat(layout.longestRun()).isCloseTo(barrel.arc(), within(1e-3));
            assertThat(Math.toDegrees(plane.pitch())).isCloseTo(Math.max(-from, to), within(0.01));
            assertThat(plane.planArea())
                    .isCloseTo(
                            radius * (Math.sin(barrel.to()) - Math.sin(barrel.from())) * length,
                            within(1e-4 * barrel.arc() * length));
        });
    }

    @Property(tries = 40)
    void nothing_depends_on_where_a_barrel_stands(
            @ForAll @DoubleRange(min = -3.1, max = 3.1) double turn,
            @ForAll @DoubleRange(min = -900, max = 900) double x,
            @ForAll @DoubleRange(min = 8, max = 50) double radius,
            @ForAll @IntRange(min = 12, max = 30) int facets) {
        Barrel barrel = new Barrel(radius, Math.toRadians(-35), Math.toRadians(20), 9.3, facets);

        Roof a = Roofs.layOut(barrel.slabs(), List.of(), RoofFixtures.settings(0.5));
        Roof b = Roofs.layOut(
                moved(barrel.slabs(), turn, Vector3D.of(x, -2 * x, 7)), List.of(), RoofFixtures.settings(0.5));

        assertThat(b.planes()).hasSameSizeAs(a.planes());
        assertThat(figures(b)).containsExactly(figures(a), within(1e-4));
    }

    @Property(tries = 30)
    void a_mirrored_barrel_has_the_same_figures(
            @ForAll @DoubleRange(min = 8, max = 50) double radius,
            @ForAll @DoubleRange(min = 10, max = 40) double low,
            @ForAll @DoubleRange(min = 5, max = 40) double high) {
        Barrel one = new Barrel(radius, Math.toRadians(-low), Math.toRadians(high), 9.3, 16);
        Barrel other = new Barrel(radius, Math.toRadians(-high), Math.toRadians(low), 9.3, 16);

        Roof a = Roofs.layOut(one.slabs(), List.of(), RoofFixtures.settings(0.5));
        Roof b = Roofs.layOut(other.slabs(), List.of(), RoofFixtures.settings(0.5));

        assertThat(figures(b)).containsExactly(figures(a), within(1e-4));
    }

    @Property(tries = 30)
    void spans_along_the_arc_are_those_between_purlins_set_out_on_it(
            @ForAll @DoubleRange(min = 8, max = 50) double radius,
            @ForAll @DoubleRange(min = -3.1, max = 3.1) double turn,
            @ForAll @IntRange(min = 12, max = 30) int facets) {
        Barrel barrel = new Barrel(radius, Math.toRadians(-30), Math.toRadians(25), 8, facets);
        List<ReadElement> purlins = new ArrayList<>();
        double[] shares = {0.05, 0.2, 0.45, 0.7, 0.92};
        for (double share : shares) {
            double angle = barrel.from() + share * (barrel.to() - barrel.from());
            Vector3D up = p(0, Math.sin(angle), Math.cos(angle));
            Vector3D top = up.multiply(radius - 0.1);
            purlins.add(RoofFixtures.bar(
                    "purlin " + share, 0.1, p(0, 0, 0).add(top), p(8, 0, 0).add(top), up));
        }

        Roof roof = Roofs.layOut(
                moved(barrel.slabs(), turn, Vector3D.ZERO),
                moved(purlins, turn, Vector3D.ZERO),
                RoofFixtures.settings(0.5));

        double[] expected = new double[shares.length + 1];
        for (int i = 0; i <= shares.length; i++) {
            double from = i == 0 ? 0 : shares[i - 1];
            double to = i == shares.length ? 1 : shares[i];
            expected[i] = (to - from) * barrel.arc();
        }
        assertThat(roof.planes().get(0).spans().stream()
                        .mapToDouble(Span::length)
                        .sorted()
                        .toArray())
                .containsExactly(Arrays.stream(expected).sorted().toArray(), within(1e-3));
    }

    private static double[] figures(Roof roof) {
        List<Double> figures = new ArrayList<>();
        for (PlaneLayout layout : roof.planes()) {
            RoofPlane p = layout.plane();
            figures.addAll(List.of(p.area(), p.planArea(), p.pitch(), p.ridgeLevel() - p.eaveLevel()));
            figures.add(layout.longestRun());
            figures.add((double) layout.sheets().size());
        }
        for (EdgeKind kind : EdgeKind.values()) {
            figures.add(PublishedRoofsTest.total(roof, kind));
        }
        return figures.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
