package runtrue.wind.eurocode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.geom.util.AffineTransformation;
import runtrue.wind.TestRoofs;
import runtrue.wind.WindPressures;
import runtrue.wind.WindResult;
import runtrue.wind.form.EavesDetail;
import runtrue.wind.form.WindRoof;
import runtrue.wind.form.WindSlope;
import runtrue.wind.site.EurocodeSite;

/**
 * On rectangles the strips along edges are the figures of EN 1991-1-4: each point has the zone that its distances x from
 * the windward edge and y from the nearer side edge say (figures 7.6 and 7.8, from memory).
 */
class RectangleProperties {
    private static final EurocodeSite SITE = EurocodeSite.recommended(26, "II");

    /** Zone of a point x behind the windward edge and y from the nearer side edge, on planes without J. */
    private static String windward(double x, double y, double e, String rest) {
        if (x < e / 10) {
            return y < e / 4 ? "F" : "G";
        }
        return rest.equals("I") && x >= e / 2 ? "I" : "H";
    }

    private static String zoneAt(WindResult result, String wind, double x, double y) {
        Coordinate point = new Coordinate(x, y);
        return result.zones().stream()
                .filter(z -> z.zone().wind().equals(wind))
                .filter(z -> z.zone().region().covers(new GeometryFactory().createPoint(point)))
                .map(z -> z.zone().name())
                .collect(Collectors.joining(" "));
    }

    private static boolean nearAnyLine(double x, double y, double e) {
        return List.of(x - e / 10, x - e / 2, y - e / 4).stream().anyMatch(d -> Math.abs(d) < 1e-3);
    }

    @Property(tries = 100)
    void each_point_of_a_flat_roof_has_its_zone(
            @ForAll @DoubleRange(min = 20, max = 60) double length,
            @ForAll @DoubleRange(min = 6, max = 19) double width,
            @ForAll @DoubleRange(min = 3, max = 30) double height,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double u,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double v) {
        WindResult result =
                WindPressures.of(SITE, TestRoofs.flat(TestRoofs.rectangle(length, width), height, EavesDetail.sharp()));
        double px = u * length;
        double py = v * width;
        double sideOfShortWind = Math.min(px, length - px);
        double e = Math.min(length, 2 * height);
        Assume.that(!nearAnyLine(py, sideOfShortWind, e) && !nearAnyLine(width - py, sideOfShortWind, e));

        List<String> across = List.of(zoneAt(result, "wind 0°", px, py), zoneAt(result, "wind 180°", px, py));

        assertThat(across)
                .containsExactlyInAnyOrder(
                        windward(py, sideOfShortWind, e, "I"), windward(width - py, sideOfShortWind, e, "I"));
    }

    @Property(tries = 100)
    void each_point_of_a_duo_pitch_roof_has_its_zone(
            @ForAll @DoubleRange(min = 10, max = 60) double length,
            @ForAll @DoubleRange(min = 10, max = 60) double width,
            @ForAll @DoubleRange(min = 3, max = 20) double height,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double u,
            @ForAll @DoubleRange(min = 0.01, max = 0.99) double v) {
        WindResult result = WindPressures.of(SITE, TestRoofs.duo(length, width, height - 1, height, 12));
        double px = u * length;
        double py = v * width;
        double e0 = Math.min(length, 2 * height);
        double e90 = Math.min(width, 2 * height);
        double side = Math.min(px, length - px);
        double nearEaves = Math.min(py, width - py);
        double behind = py - width / 2;
        // Where a strip reaches over the ridge the figure says nothing: the roof would be shallower than e/10.
        Assume.that(e0 / 10 < width / 2);
        Assume.that(!nearAnyLine(py, side, e0) && Math.abs(behind) > 1e-3 && Math.abs(behind - e0 / 10) > 1e-3);
        Assume.that(!nearAnyLine(length - px, nearEaves, e90) && !nearAnyLine(px, nearEaves, e90));

        assertThat(zoneAt(result, "wind 0°", px, py))
                .isEqualTo(behind < 0 ? windward(py, side, e0, "H") : behind < e0 / 10 ? "J" : "I");
        assertThat(zoneAt(result, "wind 90°", px, py)).isEqualTo(windward(length - px, nearEaves, e90, "I"));
        assertThat(zoneAt(result, "wind 270°", px, py)).isEqualTo(windward(px, nearEaves, e90, "I"));
    }

    @Property(tries = 20)
    void a_turned_and_shifted_roof_has_the_same_zones(
            @ForAll @DoubleRange(min = 0, max = 6.28) double angle,
            @ForAll @DoubleRange(min = -500, max = 500) double shift) {
        WindRoof roof = TestRoofs.hipped(40, 20, 3, 5, 11.31);

        Map<String, Double> straight = areas(WindPressures.of(SITE, roof));

        assertThat(areas(WindPressures.of(SITE, turned(roof, angle, shift))))
                .hasSameSizeAs(straight)
                .allSatisfy((zone, area) -> assertThat(area).isCloseTo(straight.get(zone), within(1e-3)));
    }

    private static WindRoof turned(WindRoof roof, double angle, double shift) {
        AffineTransformation move = AffineTransformation.rotationInstance(angle);
        move.translate(shift, -shift);
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        List<WindSlope> slopes = roof.slopes().stream()
                .map(p -> new WindSlope(
                        p.id(),
                        move.transform(p.plan()),
                        c * p.fallX() - s * p.fallY(),
                        s * p.fallX() + c * p.fallY(),
                        p.pitch()))
                .toList();
        return new WindRoof(
                "R",
                (Polygon) move.transform(roof.outline()),
                roof.form(),
                slopes,
                roof.eavesHeight(),
                roof.ridgeHeight(),
                roof.eaves());
    }

    private static Map<String, Double> areas(WindResult result) {
        return result.zones().stream()
                .collect(Collectors.groupingBy(
                        z -> z.zone().slope() + " " + z.zone().label(),
                        Collectors.summingDouble(z -> z.zone().planArea())));
    }
}
