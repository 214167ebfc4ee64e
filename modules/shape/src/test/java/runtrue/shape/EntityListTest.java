package runtrue.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import runtrue.ifc.schema.Schema;
import runtrue.ifc.schema.SchemaClass;

/**
 * Every curve, profile, solid and surface of the three schemas, one line each: a body that is made with it and its volume
 * (of surfaces the area), or why it is not read. A name of the schemas that has no line here fails.
 */
class EntityListTest {
    private static final List<String> ROOTS = List.of(
            "IfcCurve",
            "IfcProfileDef",
            "IfcSolidModel",
            "IfcCsgPrimitive3D",
            "IfcSectionedSpine",
            "IfcBooleanResult",
            "IfcSegment",
            "IfcCompositeCurveSegment",
            "IfcSurface");

    /** Classes of which a file has no instance, or that another room's tests hold: bodies by their faces. */
    private static final Set<String> APART = Set.of(
            "IfcBSplineCurve",
            "IfcBSplineSurface",
            "IfcBooleanClippingResult",
            "IfcBooleanResult",
            "IfcBoundedCurve",
            "IfcBoundedSurface",
            "IfcConic",
            "IfcCsgPrimitive3D",
            "IfcCurve",
            "IfcDirectrixCurveSweptAreaSolid",
            "IfcElementarySurface",
            "IfcManifoldSolidBrep",
            "IfcOffsetCurve",
            "IfcParameterizedProfileDef",
            "IfcSectionedSolid",
            "IfcSegment",
            "IfcSolidModel",
            "IfcSpiral",
            "IfcSurface",
            "IfcSweptAreaSolid",
            "IfcSweptSurface",
            "IfcAdvancedBrep",
            "IfcAdvancedBrepWithVoids",
            "IfcFacetedBrep",
            "IfcFacetedBrepWithVoids");

    private record Line(String entity, String schema, double volume, double slack, String reason, String data) {}

    private static List<Line> lines() {
        String text = resource(EntityListTest.class, "entities.txt");
        List<Line> lines = new ArrayList<>();
        for (String line : text.lines().toList()) {
            if (line.isBlank() || line.startsWith("!")) {
                continue;
            }
            String[] part = line.split("\\|", -1);
            boolean read = part[2].strip().matches("[0-9.]+");
            lines.add(new Line(
                    part[0].strip(),
                    part[1].strip(),
                    read ? Double.parseDouble(part[2].strip()) : 0,
                    read ? Double.parseDouble(part[3].strip()) : 0,
                    read ? "" : part[2].strip(),
                    part[4].strip()));
        }
        return lines;
    }

    private static String resource(Class<?> beside, String name) {
        try (InputStream in = beside.getResourceAsStream(name)) {
            return new String(java.util.Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @TestFactory
    List<DynamicTest> each_is_read_with_its_volume_or_has_a_reason() {
        return lines().stream()
                .map(line -> DynamicTest.dynamicTest(line.entity() + " " + line.schema(), () -> check(line)))
                .toList();
    }

    private static void check(Line line) {
        String keyword = line.entity().toUpperCase(java.util.Locale.ROOT) + "(";
        assertThat(line.data()).contains(keyword);
        Shape shape = ModelText.readIn(line.schema(), line.data());
        if (!line.reason().isEmpty()) {
            assertThat(shape).isInstanceOf(Shape.Unread.class);
            assertThat(((Shape.Unread) shape).reason()).contains(line.reason());
            return;
        }
        assertThat(shape).isInstanceOf(Shape.Body.class);
        Shape.Body body = (Shape.Body) shape;
        boolean surface = Schema.of("IFC4X3")
                .map(schema -> schema.find(line.entity()))
                .filter(type -> type.isA("IfcSurface"))
                .isPresent();
        assertThat(body.closed() || surface).isTrue();
        assertThat(surface ? AdvancedBrepTest.area(body.faces()) : UpwardPlanes.volume(body.faces()))
                .isEqualTo(line.volume(), within(line.slack() * line.volume() + 1e-9));
    }

    @Test
    void every_name_of_the_three_schemas_has_its_line() {
        Set<String> known = new TreeSet<>(APART);
        lines().forEach(line -> known.add(line.entity()));
        Set<String> missing = new TreeSet<>();
        for (String release : List.of("IFC2X3", "IFC4", "IFC4X3")) {
            Schema schema = Schema.of(release).orElseThrow();
            String table = resource(Schema.class, release + ".txt");
            for (String line : table.lines().skip(1).toList()) {
                SchemaClass type = schema.find(line.substring(0, line.indexOf(' ')));
                if (type != null && ROOTS.stream().anyMatch(type::isA) && !known.contains(type.name())) {
                    missing.add(type.name() + " (" + release + ")");
                }
            }
        }
        assertThat(missing).isEmpty();
    }
}
