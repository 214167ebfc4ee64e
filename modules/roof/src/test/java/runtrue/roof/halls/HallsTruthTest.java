package runtrue.roof.halls;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import runtrue.roof.EdgeKind;
import runtrue.roof.PlaneLayout;
import runtrue.roof.RoofEdge;
import runtrue.roof.RoofPlane;
import runtrue.roof.Sheet;
import runtrue.roof.Span;
import runtrue.roof.SpanKind;
import runtrue.roof.Stretch;
import runtrue.roof.SupportLine;
import tools.jackson.databind.JsonNode;

/**
 * Steel halls whose figures are known by construction: the truth files beside the models were written from the design
 * parameters by plane geometry. Tolerances are those that their description calls fair: lengths 1 mm, areas 0.05 %,
 * angles 0.01 degrees, counts exact.
 */
class HallsTruthTest {
    private static final Offset<Double> MILLIMETRE = within(1e-3);
    private static final Offset<Double> HUNDREDTH_DEGREE = within(0.01);

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void planes_have_their_true_pitch_direction_and_area(String name) {
        Hall hall = Hall.read(name, 1.0);

        assertThat(hall.roof().planes()).hasSameSizeAs(hall.truePlanes());
        for (JsonNode truth : hall.truePlanes()) {
            RoofPlane plane = hall.match(truth).plane();
            String id = truth.get("id").asString();
            assertThat(Math.toDegrees(plane.pitch()))
                    .as(id)
                    .isCloseTo(truth.get("pitchDeg").asDouble(), HUNDREDTH_DEGREE);
            double azimuth = truth.get("azimuthWorldDeg").asDouble();
            assertThat(turned(Math.toDegrees(plane.azimuth().orElseThrow()) - azimuth))
                    .as(id)
                    .isCloseTo(0, HUNDREDTH_DEGREE);
            assertClose(id + " area", plane.area(), truth.get("areaTrue"));
            assertClose(id + " gross area", plane.grossArea(), truth.get("areaTrueGross"));
            assertClose(id + " plan area", plane.planArea(), truth.get("areaPlan"));
            assertThat(plane.outline().getEnvelopeInternal().getWidth())
                    .as(id)
                    .isCloseTo(truth.get("acrossExtent").asDouble(), MILLIMETRE);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void support_lines_lie_where_they_were_designed(String name) {
        Hall hall = Hall.read(name, 1.0);

        for (JsonNode truth : hall.truePlanes()) {
            PlaneLayout layout = hall.match(truth);
            List<JsonNode> lines = new ArrayList<>();
            truth.get("supportLines").forEach(line -> {
                if (line.get("isSupport").asBoolean()) {
                    lines.add(line);
                }
            });
            for (JsonNode line : lines) {
                double v = line.get("v").asDouble();
                assertThat(layout.supports())
                        .as(truth.get("id") + " line at " + v)
                        .anySatisfy(found -> {
                            assertThat(found.v()).isCloseTo(v, MILLIMETRE);
                            line.get("extents")
                                    .forEach(extent -> assertThat(found.extents())
                                            .anySatisfy(e -> {
                                                assertThat(e.from())
                                                        .isCloseTo(extent.get(0).asDouble(), MILLIMETRE);
                                                assertThat(e.to())
                                                        .isCloseTo(extent.get(1).asDouble(), MILLIMETRE);
                                            }));
                        });
            }
            assertThat(layout.supports())
                    .as(truth.get("id").asString())
                    .allSatisfy(found -> assertThat(lines)
                            .anySatisfy(line -> assertThat(found.v())
                                    .isCloseTo(line.get("v").asDouble(), MILLIMETRE)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void spans_are_those_of_the_design_all_across_each_plane(String name) {
        Hall hall = Hall.read(name, 1.0);

        for (JsonNode truth : hall.truePlanes()) {
            PlaneLayout layout = hall.match(truth);
            for (JsonNode stretch : truth.get("stretches")) {
                double from = stretch.get("uFrom").asDouble();
                double to = stretch.get("uTo").asDouble();
                for (double share : new double[] {0.02, 0.5, 0.98}) {
                    double u = from + share * (to - from);
                    Stretch found = layout.stretches().stream()
                            .filter(s -> s.u().contains(u))
                            .findFirst()
                            .orElseThrow(() -> new AssertionError("no stretch at " + u));
                    assertThat(lengths(found, u))
                            .as(truth.get("id") + " at u = " + u)
                            .containsExactly(expectedLengths(found, stretch, share, u), MILLIMETRE);
                }
            }
        }
    }

    /** What rules judge: a span that no stretch of the design has would be found at fault on a sound roof. */
    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void no_span_is_longer_than_the_longest_of_the_design(String name) {
        Hall hall = Hall.read(name, 1.0);

        for (JsonNode truth : hall.truePlanes()) {
            double longest = 0;
            for (JsonNode stretch : truth.get("stretches")) {
                for (String kind : List.of("endSpans", "internalSpans")) {
                    for (JsonNode span : stretch.path(kind)) {
                        longest = Math.max(longest, Math.max(number(span, 0), number(span, 1)));
                    }
                }
            }
            double found = hall.match(truth).spans().stream()
                    .filter(s -> s.kind() == SpanKind.END_SPAN || s.kind() == SpanKind.INTERNAL_SPAN)
                    .mapToDouble(Span::length)
                    .max()
                    .orElse(0);
            assertThat(found).as(truth.get("id").asString()).isCloseTo(longest, MILLIMETRE);
        }
    }

    /** Low edge, supports, high edge as they were read at u, as distances along the fall. */
    private static double[] lengths(Stretch stretch, double u) {
        double share = (u - stretch.u().from()) / stretch.u().length();
        List<Double> v = new ArrayList<>();
        v.add(at(stretch.low(), share));
        stretch.crossings().forEach(c -> v.add(at(c.v(), share)));
        v.add(at(stretch.high(), share));
        return lengths(v);
    }

    private static double at(Stretch.Ends ends, double share) {
        return ends.atFrom() + share * (ends.atTo() - ends.atFrom());
    }

    private static double[] lengths(List<Double> positions) {
        double[] lengths = new double[positions.size() - 1];
        for (int i = 0; i < lengths.length; i++) {
            lengths[i] = positions.get(i + 1) - positions.get(i);
        }
        return lengths;
    }

    private static double[] expectedLengths(Stretch found, JsonNode stretch, double share, double u) {
        if (!stretch.has("firstOverhang")) {
            double at = (u - found.u().from()) / found.u().length();
            return new double[] {at(found.high(), at) - at(found.low(), at)};
        }
        List<Double> lengths = new ArrayList<>();
        lengths.add(number(stretch.get("firstOverhang"), share));
        List<Double> spans = new ArrayList<>();
        JsonNode ends = stretch.get("endSpans");
        if (ends != null && !ends.isEmpty()) {
            spans.add(number(ends.get(0), share));
            stretch.get("internalSpans").forEach(s -> spans.add(number(s, share)));
            if (ends.size() > 1) {
                spans.add(number(ends.get(1), share));
            }
        }
        lengths.addAll(spans);
        lengths.add(number(stretch.get("lastOverhang"), share));
        return lengths.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** A figure that may vary linearly over its stretch. */
    private static double number(JsonNode value, double share) {
        return value.isArray()
                ? value.get(0).asDouble()
                        + share * (value.get(1).asDouble() - value.get(0).asDouble())
                : value.asDouble();
    }

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void sheets_have_their_true_number_length_and_last_width(String name) {
        for (double cover : new double[] {0.7, 1.0}) {
            Hall hall = Hall.read(name, cover);
            for (JsonNode truth : hall.truePlanes()) {
                JsonNode sheets = null;
                for (JsonNode s : truth.get("sheets")) {
                    sheets = s.get("coverWidth").asDouble() == cover ? s : sheets;
                }
                assertThat(sheets).isNotNull();
                assertSheets(truth.get("id") + " at " + cover, hall.match(truth), sheets);
            }
        }
    }

    private static void assertSheets(String what, PlaneLayout layout, JsonNode truth) {
        int strips = truth.get("strips").asInt();
        double[] longest = new double[strips];
        for (Sheet sheet : layout.sheets()) {
            assertThat(sheet.number()).as(what).isLessThanOrEqualTo(strips);
            int i = sheet.number() - 1;
            longest[i] = Math.max(longest[i], sheet.length());
        }
        double[] expected = new double[strips];
        JsonNode lengths = truth.get("lengthsInOrder");
        int at = 0;
        for (JsonNode entry : lengths) {
            int count = entry.has("count") ? entry.get("count").asInt() : 1;
            double length = entry.has("length") ? entry.get("length").asDouble() : entry.asDouble();
            for (int i = 0; i < count; i++) {
                expected[at++] = length;
            }
        }
        assertThat(at).as(what).isEqualTo(strips);
        List<Integer> split = new ArrayList<>();
        truth.get("splitByPenetration").forEach(s -> split.add(s.get("strip").asInt()));
        for (int i = 0; i < strips; i++) {
            if (!split.contains(i + 1)) {
                assertThat(longest[i]).as(what + ", strip " + (i + 1)).isCloseTo(expected[i], MILLIMETRE);
            }
        }
        for (int number : split) {
            assertThat(layout.sheets().stream().filter(s -> s.number() == number))
                    .as(what + ", strip " + number)
                    .hasSizeGreaterThan(1);
        }
        double last = layout.sheets().get(layout.sheets().size() - 1).u().length();
        assertThat(last).as(what).isCloseTo(truth.get("lastStripWidth").asDouble(), MILLIMETRE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void edges_add_up_by_kind(String name) {
        Hall hall = Hall.read(name, 1.0);

        for (EdgeKind kind : EdgeKind.values()) {
            double found = hall.roof().edges().stream()
                    .filter(e -> e.kind() == kind)
                    .mapToDouble(RoofEdge::length)
                    .sum();
            JsonNode total = hall.truth().get("edgeTotals").get(kind.label());
            assertThat(found).as(kind.label()).isCloseTo(total == null ? 0 : total.asDouble(), within(2e-3));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void penetrations_have_their_true_size(String name) {
        Hall hall = Hall.read(name, 1.0);

        double[] found = hall.roof().planes().stream()
                .flatMap(l -> l.plane().penetrations().stream())
                .mapToDouble(p -> p.area())
                .sorted()
                .toArray();
        List<Double> expected = new ArrayList<>();
        hall.truth()
                .get("penetrations")
                .forEach(p -> expected.add(p.get("areaTrue").asDouble()));
        double[] sorted =
                expected.stream().mapToDouble(Double::doubleValue).sorted().toArray();
        assertThat(found).as(Arrays.toString(sorted)).containsExactly(sorted, MILLIMETRE);
    }

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void no_element_of_a_hall_stays_unread(String name) {
        assertThat(Hall.read(name, 1.0).elements().unread()).isEmpty();
        assertThat(Hall.read(name, 1.0).roof().planes())
                .flatExtracting(PlaneLayout::supports)
                .flatExtracting(SupportLine::pieces)
                .isNotEmpty();
    }

    private static double turned(double degrees) {
        return degrees - 360 * Math.rint(degrees / 360);
    }

    private static void assertClose(String what, double found, JsonNode truth) {
        assertThat(found).as(what).isCloseTo(truth.asDouble(), within(truth.asDouble() * 5e-4));
    }
}
