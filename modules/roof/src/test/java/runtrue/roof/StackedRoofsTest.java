package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Two level slabs, half a metre apart: how much of the lower one is roof. Areas worked by hand. */
class StackedRoofsTest {
    private static final ReadElement LOWER = level("lower", 0, 0, 40, 25, 5);

    private static ReadElement level(String id, double x0, double y0, double x1, double y1, double z) {
        return slab(id, 0.1, p(x0, y0, z), p(x1, y0, z), p(x1, y1, z), p(x0, y1, z));
    }

    private static List<Double> areas(ReadElement... slabs) {
        return Roofs.layOut(List.of(slabs), List.of(), settings(0.5)).planes().stream()
                .map(l -> Math.rint(l.plane().area() * 1e4) / 1e4)
                .sorted()
                .toList();
    }

    @Test
    void a_wide_part_left_of_a_mostly_covered_roof_stays_a_plane() {
        assertThat(areas(LOWER, level("upper", 0, 0, 28.4, 25, 5.5))).containsExactly(290.0, 710.0);
    }

    @Test
    void a_rim_left_all_round_a_covered_layer_is_its_edge() {
        ReadElement upper = level("upper", 0.5, 0.5, 39.5, 24.5, 5.5);

        assertThat(areas(LOWER, upper)).containsExactly(39.0 * 24);
        assertThat(Roofs.layOut(List.of(LOWER, upper), List.of(), settings(0.5)).unplaced())
                .extracting(u -> u.element().element().globalId())
                .containsExactly("lower");
    }

    @Test
    void a_wide_part_loses_the_rim_that_hangs_on_it() {
        Roof roof = Roofs.layOut(List.of(LOWER, level("upper", 0, 0.4, 30, 24.6, 5.5)), List.of(), settings(0.5));

        assertThat(roof.planes())
                .extracting(l -> l.plane().area())
                .anySatisfy(area -> assertThat(area).isCloseTo(10 * 25, within(1e-3)))
                .anySatisfy(area -> assertThat(area).isCloseTo(30 * 24.2, within(1e-3)))
                .hasSize(2);
    }

    /** A wedge of insulation between two heights of its top along y, its underside level at a height. */
    private static ReadElement wedge(String id, double y0, double top0, double y1, double top1, double under) {
        return RoofFixtures.element(
                id,
                "predefined type ROOF",
                RoofFixtures.prism(
                        List.of(p(0, y0, top0), p(20, y0, top0), p(20, y1, top1), p(0, y1, top1)),
                        List.of(p(0, y0, under), p(20, y0, under), p(20, y1, under), p(0, y1, under))));
    }

    /** 20 m along an eave, 8 m from 0.05 m to 0.25 m thick: 20 x sqrt(64 + 0.04) m2 on either side of the ridge. */
    @Test
    void a_level_deck_under_tapered_insulation_with_two_falls_is_counted_once() {
        ReadElement deck = slab("deck", 0.2, p(0, 0, 5), p(20, 0, 5), p(20, 16, 5), p(0, 16, 5));
        List<ReadElement> layers =
                List.of(deck, wedge("south", 0, 5.05, 8, 5.25, 5), wedge("north", 8, 5.25, 16, 5.05, 5));

        Roof roof = Roofs.layOut(layers, List.of(), settings(0.5));

        double side = 20 * Math.sqrt(64.04);
        assertThat(roof.planes())
                .extracting(l -> l.plane().area())
                .hasSize(2)
                .allSatisfy(area -> assertThat(area).isCloseTo(side, within(1e-3)));
        assertThat(roof.unplaced())
                .singleElement()
                .satisfies(u -> assertThat(u.counted()).isTrue());
    }

    @Test
    void a_wedge_falls_as_its_top_does() {
        Roof roof = Roofs.layOut(List.of(wedge("wedge", 0, 5.05, 8, 5.25, 5)), List.of(), settings(0.5));

        assertThat(roof.planes())
                .singleElement()
                .satisfies(l -> assertThat(Math.tan(l.plane().pitch())).isCloseTo(0.2 / 8, within(1e-9)));
    }

    /** A roof that passes from below another to above it is no layer of it. */
    @Test
    void planes_that_cross_each_other_both_stay() {
        ReadElement crossing = slab("crossing", 0.1, p(0, 0, 4.8), p(20, 0, 4.8), p(20, 16, 5.2), p(0, 16, 5.2));
        ReadElement level = slab("level", 0.1, p(0, 0, 5), p(20, 0, 5), p(20, 16, 5), p(0, 16, 5));

        assertThat(Roofs.layOut(List.of(crossing, level), List.of(), settings(0.5))
                        .planes())
                .hasSize(2);
    }
}
