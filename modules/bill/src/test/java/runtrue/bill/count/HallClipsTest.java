package runtrue.bill.count;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import runtrue.roof.Interval;
import runtrue.roof.SetOut;
import runtrue.roof.SupportLine;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Crossings of ribs and supports against the halls' truth, which is exact by construction. */
class HallClipsTest {
    private static final GeometryFactory GEOMETRY = new GeometryFactory();

    @ParameterizedTest
    @ValueSource(strings = {"karrowby", "brandmoor", "ossolaro", "twinfall", "overmere"})
    void clips_are_counted_where_ribs_cross_supports(String hall) throws Exception {
        Path file = SharedFiles.folder("halls").resolve(hall).resolve("truth.json");
        JsonNode truth = JsonMapper.shared().readTree(Files.readString(file));
        int compared = 0;
        for (JsonNode plane : truth.path("planes")) {
            for (JsonNode sheets : plane.path("sheets")) {
                double cover = sheets.path("coverWidth").asDouble();
                SetOut setOut = sheets.path("setOutFrom").asString().contains("right") ? SetOut.RIGHT : SetOut.LEFT;
                Polygon outline = outline(truth, plane);
                List<Double> ribs = RibLines.of(outline.getEnvelopeInternal(), cover, cover, setOut);
                assertThat(ribs).hasSize(sheets.path("ribLines").asInt());
                List<Crossings.Crossing> counted = Crossings.of(outline, ribs, lines(plane));
                int atEdges = (int)
                        counted.stream().filter(Crossings.Crossing::atEdge).count();
                JsonNode expected = sheets.path("supportRibCrossings");
                assertThat(List.of(atEdges, counted.size() - atEdges, counted.size()))
                        .as("%s %s %s", hall, plane.path("id").asString(), cover)
                        .containsExactly(
                                expected.path("firstVerge").asInt()
                                        + expected.path("lastVerge").asInt(),
                                expected.path("interior").asInt(),
                                expected.path("total").asInt());
                compared++;
            }
        }
        assertThat(compared).isPositive();
    }

    private static Polygon outline(JsonNode truth, JsonNode plane) {
        List<LinearRing> holes = new ArrayList<>();
        for (JsonNode hole : truth.path("penetrations")) {
            if (hole.path("plane").asString().equals(plane.path("id").asString())) {
                holes.add(ring(hole.path("outlineUV")));
            }
        }
        return GEOMETRY.createPolygon(ring(plane.path("outlineUV")), holes.toArray(new LinearRing[0]));
    }

    private static LinearRing ring(JsonNode points) {
        List<Coordinate> ring = new ArrayList<>();
        points.forEach(
                p -> ring.add(new Coordinate(p.get(0).asDouble(), p.get(1).asDouble())));
        ring.add(ring.get(0));
        return GEOMETRY.createLinearRing(ring.toArray(new Coordinate[0]));
    }

    private static List<SupportLine> lines(JsonNode plane) {
        List<SupportLine> lines = new ArrayList<>();
        for (JsonNode line : plane.path("supportLines")) {
            if (line.path("isSupport").asBoolean(true)) {
                List<Interval> extents = new ArrayList<>();
                line.path("extents")
                        .forEach(e -> extents.add(
                                new Interval(e.get(0).asDouble(), e.get(1).asDouble())));
                lines.add(new SupportLine(
                        line.path("id").asString(),
                        lines.size() + 1,
                        line.path("v").asDouble(),
                        List.of(),
                        extents));
            }
        }
        return lines;
    }
}
