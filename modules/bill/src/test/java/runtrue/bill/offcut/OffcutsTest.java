package runtrue.bill.offcut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import runtrue.bill.TwoPlanes;
import runtrue.bill.offcut.MayServe.Way;
import runtrue.roof.PlaneLayout;
import runtrue.roof.SetOut;

/** Sheets of 0.5 m, worked by hand. */
class OffcutsTest {
    private static List<MayServe> of(SetOut setOut, Optional<Double> longest, PlaneLayout... planes) {
        return Offcuts.of(TwoPlanes.roof(planes), setOut, (plane, sheet) -> sheet.blank(), longest);
    }

    private static PlaneLayout plane(String id, SetOut setOut, double... corners) {
        Coordinate[] ring = new Coordinate[corners.length / 2 + 1];
        for (int i = 0; i < corners.length / 2; i++) {
            ring[i] = new Coordinate(corners[2 * i], corners[2 * i + 1]);
        }
        ring[ring.length - 1] = ring[0].copy();
        Polygon outline = new GeometryFactory().createPolygon(ring);
        return TwoPlanes.plane(id, outline, setOut);
    }

    /**
     * Eave 4 m, ridge 4 m, 2 m to the right of it: at the valley the sheets' low ends rise by 0.5 m, at the hip their high ends
     * do. Four sheets each; one above the other two fit together and save 0.5 m. A parallelogram of 2 m up the fall.
     */
    @Test
    void a_sheet_at_a_valley_fits_onto_one_at_a_parallel_hip() {
        PlaneLayout plane = plane("A", SetOut.LEFT, 0, 0, 4, 0, 6, 2, 2, 2);
        List<MayServe> pairs = of(SetOut.LEFT, Optional.empty(), plane);
        assertThat(pairs).hasSize(4).allSatisfy(pair -> {
            assertThat(pair.way()).isEqualTo(Way.ONE_ABOVE_THE_OTHER);
            assertThat(pair.saved()).isCloseTo(0.5, within(1e-9));
        });
        assertThat(pairs.stream().flatMap(p -> Stream.of(p.sheet(), p.otherSheet())))
                .doesNotHaveDuplicates();
    }

    /** A trapezium with a hip at either end: high ends slant to opposite sides, and a sheet is not turned end for end. */
    @Test
    void sheets_of_opposite_hips_do_not_fit_onto_each_other() {
        assertThat(of(SetOut.LEFT, Optional.empty(), plane("A", SetOut.LEFT, 0, 0, 8, 0, 6, 2, 2, 2)))
                .isEmpty();
    }

    /** 4.4 m set out from the middle: (0.4 + 0.5) / 2 = 0.45 at either verge; two of them are wider than one sheet. */
    @Test
    void trimmed_sheets_that_are_wider_than_half_do_not_lie_side_by_side() {
        PlaneLayout plane = plane("A", SetOut.CENTRED, 0, 0, 4.4, 0, 4.4, 6, 0, 6);
        assertThat(plane.sheets().get(0).u().length()).isCloseTo(0.45, within(1e-9));
        assertThat(of(SetOut.CENTRED, Optional.empty(), plane)).isEmpty();
    }

    /** 0.4 m set out from the middle: 0.2 m with its right rib and 0.2 m with its left one, 6 m each, from one of 6 m. */
    @Test
    void two_narrow_sheets_with_ribs_on_different_sides_lie_side_by_side() {
        PlaneLayout plane = plane("A", SetOut.CENTRED, 0, 0, 0.4, 0, 0.4, 6, 0, 6);
        assertThat(of(SetOut.CENTRED, Optional.empty(), plane))
                .containsExactly(new MayServe("A", 1, "A", 2, 6, 6, Way.SIDE_BY_SIDE));
    }

    /** Each trimmed to 0.2 m at the same side: what is left of one has no rib for the neighbour of the other. */
    @ParameterizedTest
    @EnumSource(names = {"LEFT", "RIGHT"})
    void what_is_trimmed_off_has_no_rib_for_the_same_side_of_another_plane(SetOut setOut) {
        PlaneLayout a = plane("A", setOut, 0, 0, 4.2, 0, 4.2, 6, 0, 6);
        PlaneLayout b = plane("B", setOut, 0, 0, 4.2, 0, 4.2, 6, 0, 6);
        assertThat(a.sheets().get(8).u().length()).isCloseTo(0.2, within(1e-9));
        assertThat(of(setOut, Optional.empty(), a, b)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0.4", "1.6", "3.1", "20"})
    void no_sheet_is_proposed_that_cannot_be_brought(double longest) {
        PlaneLayout plane = plane("A", SetOut.LEFT, 0, 0, 4, 0, 6, 2, 2, 2);
        List<MayServe> pairs = of(SetOut.LEFT, Optional.of(longest), plane);
        assertThat(pairs).allMatch(p -> p.length() <= longest + 1e-6);
        assertThat(pairs.isEmpty()).isEqualTo(longest < 0.5);
    }
}
