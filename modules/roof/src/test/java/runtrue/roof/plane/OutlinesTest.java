package runtrue.roof.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;

class OutlinesTest {
    private static Polygon polygon(String wkt) throws ParseException {
        return (Polygon) new WKTReader().read(wkt);
    }

    /** Such a slab is left where a modelling kernel cuts one by another of the same height. */
    @Test
    void a_spike_of_no_width_is_taken_out() throws ParseException {
        List<Polygon> joined =
                Outlines.join(List.of(polygon("POLYGON((0 0, 6 0, 6 3, 9 5, 6 3.00000000000001, 0 3, 0 0))")), 0.06);

        assertThat(joined).singleElement().satisfies(p -> {
            assertThat(p.getNumPoints()).isEqualTo(5);
            assertThat(p.getArea()).isCloseTo(18, within(1e-9));
        });
    }

    /** Two slopes of 28 m2 in plan each that the higher roof between them parts but for rounding. */
    @Test
    void parts_that_hang_together_by_a_neck_of_no_width_are_two() throws ParseException {
        List<Polygon> joined = Outlines.join(
                List.of(polygon("POLYGON((24 0, 20.5 3.5, 3.5 3.5, 0 0, 8 0, 11.5 3.4999999999999996,"
                        + " 12.5 3.4999999999999996, 16 0, 24 0))")),
                0.06);

        assertThat(joined).hasSize(2).allSatisfy(p -> assertThat(p.getArea()).isCloseTo(28, within(1e-5)));
    }

    @Test
    void slabs_that_touch_in_one_corner_stay_two() throws ParseException {
        List<Polygon> joined = Outlines.join(
                List.of(polygon("POLYGON((0 0, 4 0, 4 3, 0 3, 0 0))"), polygon("POLYGON((4 3, 9 3, 9 7, 4 7, 4 3))")),
                0.06);

        assertThat(joined).hasSize(2);
    }

    @Test
    void slabs_with_a_joint_between_them_are_one() throws ParseException {
        List<Polygon> joined = Outlines.join(
                List.of(
                        polygon("POLYGON((0 0, 4 0, 4 3, 0 3, 0 0))"),
                        polygon("POLYGON((4.05 0, 9 0, 9 3, 4.05 3, 4.05 0))")),
                0.06);

        assertThat(joined)
                .singleElement()
                .satisfies(p -> assertThat(p.getArea()).isCloseTo(27, within(1e-5)));
    }
}
