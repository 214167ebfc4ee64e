package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKTReader;
import runtrue.roof.sheet.SetOutChoices;
import runtrue.roof.sheet.SheetLayout;

class SetOutChoicesTest {
    private static Polygon polygon(String wkt) throws ParseException {
        return (Polygon) new WKTReader().read(wkt);
    }

    @Test
    void the_outer_strips_of_each_way_are_told() throws ParseException {
        List<SetOutChoice> choices =
                SetOutChoices.of(polygon("POLYGON((0 0, 10.2 0, 10.2 9, 0 9, 0 0))"), 1.0, SetOut.RIGHT, List.of());

        assertThat(choices).extracting(SetOutChoice::setOut).containsExactly(SetOut.LEFT, SetOut.RIGHT, SetOut.CENTRED);
        assertThat(choices).extracting(SetOutChoice::chosen).containsExactly(false, true, false);
        assertThat(choices.get(0).firstStrip()).isCloseTo(1, within(1e-9));
        assertThat(choices.get(0).lastStrip()).isCloseTo(0.2, within(1e-9));
        assertThat(choices.get(1).firstStrip()).isCloseTo(0.2, within(1e-9));
        assertThat(choices.get(2).narrowest()).isCloseTo(0.6, within(1e-9));
    }

    /**
     * A right triangle 2.5 wide and 5 high, its upright side at the right. By hand, from the left: blanks 2, 4, 5 of cover
     * 1 = 11 less the area 6.25; from the right: 5, 3, 1 = 9 less 6.25.
     */
    @Test
    void on_a_tapered_plane_one_verge_wastes_less_than_the_other() throws ParseException {
        List<SetOutChoice> choices =
                SetOutChoices.of(polygon("POLYGON((0 0, 2.5 0, 2.5 5, 0 0))"), 1.0, SetOut.LEFT, List.of());

        assertThat(choices.get(0).waste()).isCloseTo(11 - 6.25, within(1e-9));
        assertThat(choices.get(1).waste()).isCloseTo(9 - 6.25, within(1e-9));
    }

    /**
     * The same triangle in cover 0.5, by hand: from the left 1, 2, 3, 4, 5 = 15 in length, 7.5 in area; from the right the
     * same, since 2.5 is five covers.
     */
    @Test
    void other_cover_widths_come_after_the_one_laid_out() throws ParseException {
        List<SetOutChoice> choices =
                SetOutChoices.of(polygon("POLYGON((0 0, 2.5 0, 2.5 5, 0 0))"), 1.0, SetOut.LEFT, List.of(0.5));

        assertThat(choices).extracting(SetOutChoice::coverWidth).containsExactly(1.0, 1.0, 1.0, 0.5, 0.5, 0.5);
        assertThat(choices).filteredOn(SetOutChoice::chosen).hasSize(1);
        for (int i = 3; i < 5; i++) {
            assertThat(choices.get(i).sheets()).isEqualTo(5);
            assertThat(choices.get(i).waste()).isCloseTo(7.5 - 6.25, within(1e-9));
        }
    }

    /** Between two parallel slants of 1 in 1, each strip of cover 0.5 needs 0.5 more than its longest line. */
    @Test
    void a_sheet_cut_askew_at_both_ends_comes_from_a_longer_strip() throws ParseException {
        List<Sheet> sheets = SheetLayout.of(polygon("POLYGON((0 0, 2 2, 2 5, 0 3, 0 0))"), 0.5, SetOut.LEFT);

        assertThat(sheets).hasSize(4).allSatisfy(s -> {
            assertThat(s.length()).isCloseTo(3, within(1e-9));
            assertThat(s.blank()).isCloseTo(3.5, within(1e-9));
        });
    }
}
