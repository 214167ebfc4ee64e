package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.locationtech.jts.geom.Coordinate;

/**
 * What geometry says of any roof of one pitch over one eaves level, on plans of every shape. The roofs are made by
 * {@link PlannedRoof}, in pieces that the program has to join.
 */
class PlannedRoofsProperties {
    /** Wings of a building, lengths in metres. */
    private enum Plan {
        RECTANGLE,
        ELL,
        TEE,
        CROSS,
        YOU,
        COURTYARD;

        List<double[]> rectangles(double w, double v, double l, double h) {
            double[] along = {0, 0, l, w};
            double[] left = {0, 0, v, h};
            double[] right = {l - v, 0, l, h};
            double a = (l - v) / 2;
            return switch (this) {
                case RECTANGLE -> List.of(along);
                case ELL -> List.of(along, left);
                case TEE -> List.of(along, new double[] {a, 0, a + v, h});
                case CROSS -> List.of(along, new double[] {a, w - h, a + v, h});
                case YOU -> List.of(along, left, right);
                case COURTYARD -> List.of(along, left, right, new double[] {0, h - w, l, h});
            };
        }
    }

    @Property(tries = 400)
    void over_wings(
            @ForAll Plan plan,
            @ForAll @IntRange(min = 6, max = 20) int width,
            @ForAll @IntRange(min = 6, max = 20) int wing,
            @ForAll @IntRange(min = 2, max = 30) int between,
            @ForAll @IntRange(min = 2, max = 30) int beyond,
            @ForAll @DoubleRange(min = 3, max = 50) double degrees) {
        // Half metres, so that no wing is a few millimetres wider than another.
        double w = width / 2.0;
        double v = wing / 2.0;
        double l = 2 * v + between;
        double h = 2 * w + beyond;
        check(PlannedRoof.ofRectangles(plan.rectangles(w, v, l, h)), degrees);
    }

    /** Wings of one width: their ridges meet, and the slope beside the stem is two that touch in a point. */
    @Example
    void slopes_that_touch_in_a_point_stay_two() {
        check(PlannedRoof.ofRectangles(Plan.TEE.rectangles(3, 3, 8, 8)), 3);
    }

    @Property(tries = 400)
    void over_convex_plans(
            @ForAll("convexPlans") List<Coordinate> corners, @ForAll @DoubleRange(min = 3, max = 50) double degrees) {
        PlannedRoof roof = PlannedRoof.convex(corners);
        // Faces and edges as small as those that the program takes for by-products of cuts are another matter.
        Assume.that(roof.pieces().stream().allMatch(p -> p.plan().getArea() > 1 && shortestSide(p) > 0.5));
        check(roof, degrees);
    }

    @Provide
    Arbitrary<List<Coordinate>> convexPlans() {
        Arbitrary<List<Integer>> steps =
                Arbitraries.integers().between(30, 100).list().ofMinSize(3).ofMaxSize(7);
        return steps.map(list -> {
            double sum = list.stream().mapToInt(i -> i).sum();
            List<Coordinate> corners = new ArrayList<>();
            double turned = 0;
            for (int step : list) {
                turned += 2 * Math.PI * step / sum;
                corners.add(new Coordinate(12 * Math.cos(turned), 9 * Math.sin(turned)));
            }
            return corners;
        });
    }

    private static void check(PlannedRoof planned, double degrees) {
        double pitch = Math.toRadians(degrees);
        Roof roof = Roofs.layOut(planned.slabs(pitch, 0.12), List.of(), RoofFixtures.settings(0.5));

        assertThat(roof.unplaced()).isEmpty();
        double plan = planned.plan().getArea();
        assertThat(roof.planes().stream().mapToDouble(l -> l.plane().planArea()).sum())
                .isCloseTo(plan, within(1e-6 * plan));
        assertThat(roof.planes()).extracting(l -> l.plane().id()).doesNotHaveDuplicates();
        assertThat(roof.planes())
                .allSatisfy(l -> assertThat(l.plane().pitch()).isCloseTo(pitch, within(1e-6)))
                .allSatisfy(PlannedRoofsProperties::sheetsCoverThePlane)
                .allSatisfy(l -> edgesCloseThePlane(roof, l.plane()));
        assertThat(PublishedRoofsTest.total(roof, EdgeKind.EAVE))
                .isCloseTo(planned.plan().getLength(), within(1e-4));
        assertThat(roof.edges())
                .filteredOn(e -> e.kind() == EdgeKind.HIP || e.kind() == EdgeKind.VALLEY)
                .allSatisfy(e -> runsAtTheBisector(roof, e));
        assertThat(roof.edges())
                .extracting(RoofEdge::kind)
                .isSubsetOf(EdgeKind.EAVE, EdgeKind.HIP, EdgeKind.VALLEY, EdgeKind.RIDGE);
    }

    /** A corner nearer than 10 micrometres to a joint of sheets counts as on it, which a run's length of that may lack. */
    private static void sheetsCoverThePlane(PlaneLayout layout) {
        double atCorners = layout.plane().outline().getNumPoints() * 1e-5 * layout.longestRun();
        assertThat(layout.sheets().stream().mapToDouble(Sheet::area).sum())
                .isCloseTo(layout.plane().area(), within(1e-6 * layout.plane().area() + atCorners));
    }

    private static void edgesCloseThePlane(Roof roof, RoofPlane plane) {
        double edges = roof.edges().stream()
                .filter(e -> e.planes().contains(plane.id()))
                .mapToDouble(RoofEdge::length)
                .sum();
        assertThat(edges).isCloseTo(plane.outline().getLength(), within(1e-4));
    }

    /** With one pitch on both sides, an edge makes the same angle in plan with the eaves of both planes. */
    private static void runsAtTheBisector(Roof roof, RoofEdge edge) {
        Vector3D way = edge.to().subtract(edge.from());
        Vector3D inPlan = Vector3D.of(way.getX(), way.getY(), 0).normalize();
        double[] along = roof.planes().stream()
                .map(PlaneLayout::plane)
                .filter(p -> edge.planes().contains(p.id()))
                .mapToDouble(p -> Math.abs(p.frame().across().dot(inPlan)))
                .toArray();
        assertThat(along).hasSize(2);
        assertThat(along[0]).isCloseTo(along[1], within(1e-4));
    }

    private static double shortestSide(PlannedRoof.Piece piece) {
        Coordinate[] ring = piece.plan().getCoordinates();
        double shortest = Double.POSITIVE_INFINITY;
        for (int i = 0; i + 1 < ring.length; i++) {
            shortest = Math.min(shortest, ring[i].distance(ring[i + 1]));
        }
        return shortest;
    }
}
