package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import runtrue.roof.sheet.SheetLayout;

class SheetLayoutTest {
    private static Polygon polygon(String wkt) {
        try {
            return (Polygon) new WKTReader().read(wkt);
        } catch (ParseException e) {
            throw new IllegalArgumentException(wkt, e);
        }
    }

    /** The last sheet is trimmed to the width left: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"36.2, 0.7, 52, 0.5", "36.2, 1.0, 37, 0.2", "10, 0.5, 20, 0.5", "0.4, 0.5, 1, 0.4"})
    void the_last_strip_is_trimmed_to_the_width_left(double width, double cover, int strips, double last) {
        Polygon plane = polygon("POLYGON((0 0, " + width + " 0, " + width + " 9, 0 9, 0 0))");

        List<Sheet> left = SheetLayout.of(plane, cover, SetOut.LEFT);
        assertThat(left).hasSize(strips);
        assertThat(left.get(strips - 1).u().length()).isCloseTo(last, within(1e-9));
        assertThat(left.get(strips - 1).u().to()).isCloseTo(width, within(1e-9));

        List<Sheet> right = SheetLayout.of(plane, cover, SetOut.RIGHT);
        assertThat(right).hasSize(strips);
        assertThat(right.get(strips - 1).u().from()).isCloseTo(0, within(1e-9));
        assertThat(right.get(strips - 1).u().length()).isCloseTo(last, within(1e-9));
    }

    @Test
    void a_centred_set_out_trims_both_outer_strips_alike() {
        List<Sheet> sheets = SheetLayout.of(polygon("POLYGON((0 0, 10.2 0, 10.2 9, 0 9, 0 0))"), 1.0, SetOut.CENTRED);

        assertThat(sheets).hasSize(11);
        assertThat(sheets.get(0).u().length()).isCloseTo(0.6, within(1e-9));
        assertThat(sheets.get(10).u().length()).isCloseTo(0.6, within(1e-9));
    }

    @Test
    void a_hole_across_a_whole_strip_leaves_a_sheet_above_and_below() {
        List<Sheet> sheets = SheetLayout.of(
                polygon("POLYGON((0 0, 3 0, 3 9, 0 9, 0 0),(0.9 4, 2.1 4, 2.1 5, 0.9 5, 0.9 4))"), 1.0, SetOut.LEFT);

        assertThat(sheets).extracting(Sheet::number).containsExactly(1, 2, 2, 3);
        assertThat(sheets).extracting(Sheet::length).containsExactly(9.0, 4.0, 4.0, 9.0);
        assertThat(sheets).extracting(Sheet::cut).containsExactly(true, true, true, true);
    }

    @Test
    void a_hole_that_leaves_metal_beside_it_shortens_no_sheet() {
        List<Sheet> sheets = SheetLayout.of(
                polygon("POLYGON((0 0, 2 0, 2 9, 1 8, 0 7, 0 0),(1.6 4, 2 4.5, 1.6 5, 1.6 4))"), 2.0, SetOut.LEFT);

        assertThat(sheets).singleElement().satisfies(s -> {
            assertThat(s.length()).isEqualTo(9.0);
            assertThat(s.cut()).isTrue();
        });
    }

    @Test
    void a_strip_cut_to_a_taper_is_as_long_as_its_long_side() {
        List<Sheet> sheets = SheetLayout.of(polygon("POLYGON((0 0, 4 0, 4 4, 0 0))"), 1.0, SetOut.LEFT);

        assertThat(sheets).extracting(Sheet::length).containsExactly(1.0, 2.0, 3.0, 4.0);
        assertThat(sheets).allMatch(Sheet::tapered);
        assertThat(sheets).noneMatch(Sheet::cut);
    }

    @Test
    void a_strip_that_leaves_the_plane_and_comes_back_is_two_sheets() {
        List<Sheet> sheets =
                SheetLayout.of(polygon("POLYGON((0 0, 2 0, 2 3, 1 3, 1 5, 2 5, 2 8, 0 8, 0 0))"), 1.0, SetOut.LEFT);

        assertThat(sheets).extracting(Sheet::number).containsExactly(1, 2, 2);
        assertThat(sheets).extracting(Sheet::length).containsExactly(8.0, 3.0, 3.0);
        assertThat(sheets).noneMatch(Sheet::cut);
    }
}
