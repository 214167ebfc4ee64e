package runtrue.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import runtrue.result.BodyResult;
import runtrue.result.CheckResult;
import runtrue.result.PlaneResult;
import runtrue.result.json.ResultJson;

/**
 * Edge zones of a published example, the whole way from a model to its results: Single-Storey Steel Buildings, part 3,
 * appendix B: plan 32 x 60 m, 8 m high, wind on the gable: e = min(b, 2h) = min(32, 16) = 16 m; the strip along an edge is
 * e / 10 = 1.6 m wide in plan (EN 1991-1-4, figure 7.8, from memory). Wind on the long side gives the same e.
 */
class PublishedZonesTest {
    private static final double LENGTH = 60;
    private static final double HALF_WIDTH = 16;
    private static final double RISE = HALF_WIDTH * Math.tan(Math.toRadians(5));

    @TempDir
    Path work;

    private CheckResult result;

    @BeforeEach
    void check_the_example() throws IOException {
        Path drop = Files.createDirectories(work.resolve("hall"));
        Files.writeString(drop.resolve("hall.ifc"), model());
        Files.writeString(drop.resolve("runtrue.yaml"), "system: kestrel-500\nbuilding_height: 8 m\n");
        Path rules = Files.writeString(work.resolve("en.yaml"), """
                        rule_set: en
                        version: "1.0.0"
                        title: EN zones
                        edge_zone:
                          width: min(building.plan_width, 2 * building.height) / 10
                          source: EN 1991-1-4
                        rules:
                          - {id: x, title: x, severity: note, for: zone, require: zone.area > 0, source: x, message: x}
                        """);
        CommandRun.of(
                options -> ModelCheck.with(options, Instant.EPOCH),
                "check",
                drop,
                "--rules",
                rules,
                "--output",
                work.resolve("out"),
                "--quiet");
        result = ResultJson.read(work.resolve("out/hall/result.json"));
    }

    @Test
    void the_strip_is_as_wide_as_published() {
        assertThat(result.bodies()).singleElement().satisfies(body -> {
            assertThat(body.widthMetres()).isCloseTo(2 * HALF_WIDTH, within(1e-6));
            assertThat(body.lengthMetres()).isCloseTo(LENGTH, within(1e-6));
            assertThat(body.zones())
                    .hasSize(6)
                    .allSatisfy(z -> assertThat(z.widthMetres()).isCloseTo(1.6, within(1e-9)));
        });
    }

    /**
     * Zones F and G of that example cover 12.8 + 83.2 = 96.0 m2 of plan along each long side and 12.8 + 38.4 = 51.2 m2
     * along each gable; they overlap in four squares of 1.6 m: 2 x 96.0 + 2 x 51.2 - 4 x 2.56 = 284.16 m2.
     */
    @Test
    void strip_and_interior_have_the_plan_areas_of_the_example_s_zones() {
        Map<String, Double> plan = new TreeMap<>();
        for (BodyResult.Zone zone : result.bodies().get(0).zones()) {
            PlaneResult plane = result.planes().stream()
                    .filter(p -> p.id().equals(zone.plane()))
                    .findFirst()
                    .orElseThrow();
            double cosine = Math.cos(Math.toRadians(plane.pitchDegrees()));
            plan.merge(zone.kind(), zone.areaSquareMetres() * cosine, Double::sum);
        }
        assertThat(plan.get("corner")).isCloseTo(4 * 2.56, within(1e-3));
        assertThat(plan.getOrDefault("corner", 0.0) + plan.getOrDefault("edge", 0.0))
                .isCloseTo(284.16, within(1e-3));
        assertThat(plan.get("interior")).isCloseTo(32 * 60 - 284.16, within(1e-3));
    }

    /** Two slopes that fall from a ridge along the length, as surfaces; heights are above the eaves. */
    private static String model() {
        return """
                ISO-10303-21;
                HEADER;
                FILE_DESCRIPTION(('Invented for a test'),'2;1');
                FILE_NAME('hall.ifc','',(''),(''),'','','');
                FILE_SCHEMA(('IFC4'));
                ENDSEC;
                DATA;
                #1=IFCSIUNIT(*,.LENGTHUNIT.,$,.METRE.);
                #2=IFCSIUNIT(*,.PLANEANGLEUNIT.,$,.RADIAN.);
                #3=IFCUNITASSIGNMENT((#1,#2));
                #4=IFCCARTESIANPOINT((0.,0.,0.));
                #5=IFCAXIS2PLACEMENT3D(#4,$,$);
                #6=IFCGEOMETRICREPRESENTATIONCONTEXT($,'Model',3,1.E-5,#5,$);
                #7=IFCPROJECT('0YvctVUKr0kugbFTf53O9L',$,'Hall',$,$,$,$,(#6),#3);
                #8=IFCLOCALPLACEMENT($,#5);
                """
                + slab(100, "2O2Fr$t4X7Zf8NOew3FLa1", 0, 0, HALF_WIDTH, RISE)
                + slab(200, "2O2Fr$t4X7Zf8NOew3FLa2", HALF_WIDTH, RISE, 2 * HALF_WIDTH, 0)
                + "ENDSEC;\nEND-ISO-10303-21;\n";
    }

    private static String slab(int id, String globalId, double y, double z, double toY, double toZ) {
        return "#" + id + "=IFCCARTESIANPOINT((0.," + y + "," + z + "));\n"
                + "#" + (id + 1) + "=IFCCARTESIANPOINT((" + LENGTH + "," + y + "," + z + "));\n"
                + "#" + (id + 2) + "=IFCCARTESIANPOINT((" + LENGTH + "," + toY + "," + toZ + "));\n"
                + "#" + (id + 3) + "=IFCCARTESIANPOINT((0.," + toY + "," + toZ + "));\n"
                + """
                #%2$d4=IFCPOLYLOOP((#%1$d,#%3$d,#%4$d,#%5$d));
                #%2$d5=IFCFACEOUTERBOUND(#%2$d4,.T.);
                #%2$d6=IFCFACE((#%2$d5));
                #%2$d7=IFCOPENSHELL((#%2$d6));
                #%2$d8=IFCSHELLBASEDSURFACEMODEL((#%2$d7));
                #%2$d9=IFCSHAPEREPRESENTATION(#6,'Body','SurfaceModel',(#%2$d8));
                #%6$d=IFCPRODUCTDEFINITIONSHAPE($,$,(#%2$d9));
                #%7$d=IFCSLAB('%8$s',$,'Slope',$,$,#8,#%6$d,$,.ROOF.);
                """.formatted(id, id / 10, id + 1, id + 2, id + 3, id + 10, id + 11, globalId);
    }
}
