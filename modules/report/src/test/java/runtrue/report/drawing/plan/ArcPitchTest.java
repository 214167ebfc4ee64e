package runtrue.report.drawing.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import runtrue.result.PlaneResult.Curve;
import runtrue.result.PlaneResult.Station;
import runtrue.result.Point;

/** Arcs of 30 m radius between two angles off the level tangent, in degrees; negative ones rise. */
class ArcPitchTest {
    private static Curve arc(boolean barrel, double from, double to) {
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i <= 8; i++) {
            double angle = Math.toRadians(from + (to - from) * i / 8);
            double z = barrel ? 30 * Math.cos(angle) : -30 * Math.cos(angle);
            stations.add(new Station(30 * (angle - Math.toRadians(from)), new Point(30 * Math.sin(angle), 0, z)));
        }
        double least = from < 0 && to > 0 ? 0 : Math.min(Math.abs(from), Math.abs(to));
        double greatest = Math.max(Math.abs(from), Math.abs(to));
        double length = 30 * Math.toRadians(to - from);
        return new Curve(least, greatest, OptionalDouble.of(30), length, from < 0 && to > 0, 8, stations);
    }

    @ParameterizedTest
    @CsvSource({
        "true, -22, 22, 0.0° at the crown to 22.0° at the eaves",
        "true, -22, -3, 3.0° at the top to 22.0° at the eave",
        "true, 3, 22, 3.0° at the top to 22.0° at the eave",
        "false, 3, 22, 22.0° at the top to 3.0° at the eave",
        "false, -22, -3, 22.0° at the top to 3.0° at the eave",
        "false, -8, 10, 0.0° in the hollow to 10.0° at the ends"
    })
    void says_where_an_arc_is_steep_and_where_it_is_flat(boolean barrel, double from, double to, String words) {
        assertThat(ArcPitch.of(arc(barrel, from, to))).isEqualTo(words);
    }
}
