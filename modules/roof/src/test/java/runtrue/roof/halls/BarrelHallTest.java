package runtrue.roof.halls;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.roof.EdgeKind;
import runtrue.roof.PlaneLayout;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.Sheet;
import runtrue.roof.SpanKind;
import runtrue.roof.Stretch;
import runtrue.roof.curved.Curve;
import tools.jackson.databind.JsonNode;

/**
 * A barrel whose figures are known by construction: truth.json beside the model was written from its radius and angle.
 * Tolerances are those that its description calls fair: lengths 1 mm, areas 0.05 %, angles 0.01 degrees, counts exact.
 */
class BarrelHallTest {
    private static final Offset<Double> MILLIMETRE = within(1e-3);
    private static final Offset<Double> HUNDREDTH_DEGREE = within(0.01);

    private static PlaneLayout barrel(Hall hall) {
        assertThat(hall.roof().planes()).hasSize(1);
        assertThat(hall.roof().unplaced()).isEmpty();
        return hall.roof().planes().get(0);
    }

    @Test
    void a_barrel_has_the_radius_pitches_areas_and_run_of_its_design() {
        Hall hall = Hall.read("rundel", 1.0);
        JsonNode truth = hall.truePlanes().get(0);
        RoofPlane plane = barrel(hall).plane();
        Curve curve = plane.curve().orElseThrow();

        assertThat(curve.radius()).hasValueCloseTo(truth.get("radiusOuter").asDouble(), MILLIMETRE);
        assertThat(Math.toDegrees(curve.greatestPitch()))
                .isCloseTo(truth.get("pitchAtEaveDeg").asDouble(), HUNDREDTH_DEGREE);
        assertThat(Math.toDegrees(curve.leastPitch()))
                .isCloseTo(truth.get("pitchAtCrownDeg").asDouble(), HUNDREDTH_DEGREE);
        double area = truth.get("areaTrue").asDouble();
        assertThat(plane.area()).isCloseTo(area, within(area * 5e-4));
        double plan = truth.get("areaPlan").asDouble();
        assertThat(plane.planArea()).isCloseTo(plan, within(plan * 5e-4));
        assertThat(curve.section().length()).isCloseTo(truth.get("runMax").asDouble(), MILLIMETRE);
        assertThat(plane.outline().getEnvelopeInternal().getWidth())
                .isCloseTo(truth.get("acrossExtent").asDouble(), MILLIMETRE);
        assertThat(plane.ridgeLevel() - plane.eaveLevel())
                .isCloseTo(truth.get("rise").asDouble(), MILLIMETRE);
        assertThat(plane.thickness()).hasValueCloseTo(truth.at("/buildUp/depth").asDouble(), MILLIMETRE);
    }

    @Test
    void points_of_the_development_lie_on_the_barrel() {
        Hall hall = Hall.read("rundel", 1.0);
        JsonNode truth = hall.truePlanes().get(0);
        Vector3D axis = hall.world(Hall.vector(truth.get("axisPoint")));
        Vector3D direction = hall.world(
                        Hall.vector(truth.get("axisPoint")).add(Hall.vector(truth.get("axisDirection"))))
                .subtract(axis);
        RoofPlane plane = barrel(hall).plane();
        Vector3D origin = hall.roof().settings().origin();

        for (double v = 0; v <= 20; v += 2.5) {
            Vector3D from = plane.at(3, v).add(origin).subtract(axis);
            assertThat(from.dot(direction)).isCloseTo(3, MILLIMETRE);
            assertThat(from.reject(direction).norm()).isCloseTo(30, MILLIMETRE);
        }
    }

    @Test
    void support_lines_lie_where_they_were_designed_along_the_arc() {
        Hall hall = Hall.read("rundel", 1.0);
        JsonNode lines = hall.truePlanes().get(0).get("supportLines");
        PlaneLayout layout = barrel(hall);

        assertThat(layout.supports()).hasSize(lines.size());
        for (int i = 0; i < lines.size(); i++) {
            JsonNode line = lines.get(i);
            var found = layout.supports().get(i);
            assertThat(found.v()).isCloseTo(line.get("arcFromLowEdge").asDouble(), MILLIMETRE);
            List<JsonNode> pieces = new ArrayList<>();
            line.get("pieces").forEach(pieces::add);
            assertThat(found.pieces()).hasSameSizeAs(pieces);
            for (int k = 0; k < pieces.size(); k++) {
                var piece = found.pieces().get(k);
                assertThat(piece.element().globalId())
                        .isEqualTo(pieces.get(k).get("globalId").asString());
                assertThat(piece.uFrom()).isCloseTo(pieces.get(k).get("x0").asDouble(), MILLIMETRE);
                assertThat(piece.uTo()).isCloseTo(pieces.get(k).get("x1").asDouble(), MILLIMETRE);
                assertThat(piece.contact()).isCloseTo(-0.15, MILLIMETRE);
            }
        }
    }

    @Test
    void spans_are_those_of_the_design_along_the_arc_all_along_the_axis() {
        Hall hall = Hall.read("rundel", 1.0);
        PlaneLayout layout = barrel(hall);

        for (JsonNode truth : hall.truePlanes().get(0).get("stretches")) {
            for (double share : new double[] {0.02, 0.5, 0.98}) {
                double from = truth.get("xFrom").asDouble();
                double u = from + share * (truth.get("xTo").asDouble() - from);
                Stretch found = layout.stretches().stream()
                        .filter(s -> s.u().contains(u))
                        .findFirst()
                        .orElseThrow();
                List<Double> supports = new ArrayList<>();
                truth.get("supports").forEach(v -> supports.add(v.asDouble()));
                assertThat(found.crossings()).as("at u = " + u).hasSameSizeAs(supports);
                for (int i = 0; i < supports.size(); i++) {
                    assertThat(found.crossings().get(i).v().atFrom()).isCloseTo(supports.get(i), MILLIMETRE);
                }
                assertThat(found.low().atFrom()).isCloseTo(0, MILLIMETRE);
                assertThat(found.high().atFrom() - supports.get(supports.size() - 1))
                        .isCloseTo(truth.get("lastOverhang").asDouble(), MILLIMETRE);
            }
        }
    }

    @Test
    void a_barrel_has_overhangs_at_two_eaves_and_none_at_a_ridge_and_its_missing_purlin_shows_as_a_long_span() {
        PlaneLayout layout = barrel(Hall.read("rundel", 1.0));

        assertThat(layout.spans())
                .extracting(s -> s.kind())
                .contains(SpanKind.EAVE_OVERHANG)
                .doesNotContain(SpanKind.RIDGE_OVERHANG);
        assertThat(layout.spans())
                .filteredOn(s -> s.length() > 2)
                .singleElement()
                .satisfies(s -> {
                    assertThat(s.length()).isCloseTo(2 * 1.695329, MILLIMETRE);
                    assertThat(s.u().from()).isCloseTo(12.245, MILLIMETRE);
                    assertThat(s.u().to()).isCloseTo(18.405, MILLIMETRE);
                });
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.7, 1.0})
    void sheets_run_from_eave_to_eave_in_their_true_number_length_and_last_width(double cover) {
        Hall hall = Hall.read("rundel", cover);
        PlaneLayout layout = barrel(hall);
        JsonNode truth = null;
        for (JsonNode s : hall.truePlanes().get(0).get("sheets")) {
            truth = s.get("coverWidth").asDouble() == cover ? s : truth;
        }
        assertThat(truth).isNotNull();

        double length = truth.at("/lengthsInOrder/0/length").asDouble();
        assertThat(layout.sheets())
                .hasSize(truth.get("strips").asInt())
                .allSatisfy(s -> assertThat(s.length()).isCloseTo(length, MILLIMETRE));
        assertThat(layout.sheets().stream().mapToDouble(Sheet::length).sum())
                .isCloseTo(truth.get("totalLength").asDouble(), within(0.02));
        Sheet last = layout.sheets().get(layout.sheets().size() - 1);
        assertThat(last.u().length()).isCloseTo(truth.get("lastStripWidth").asDouble(), MILLIMETRE);
    }

    @Test
    void edges_add_up_by_kind_with_verges_along_the_arc() {
        Hall hall = Hall.read("rundel", 1.0);

        assertThat(hall.roof().edges()).hasSize(4);
        for (EdgeKind kind : EdgeKind.values()) {
            double found = hall.roof().edges().stream()
                    .filter(e -> e.kind() == kind)
                    .mapToDouble(RoofEdge::length)
                    .sum();
            JsonNode total = hall.truth().get("edgeTotals").get(kind.label());
            assertThat(found).as(kind.label()).isCloseTo(total == null ? 0 : total.asDouble(), within(2e-3));
        }
    }
}
