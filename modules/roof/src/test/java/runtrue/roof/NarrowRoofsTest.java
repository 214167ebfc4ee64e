package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import runtrue.shape.Face;

/** Strips beside a roof; invented, the bound of 0.3 m is common practice without a source. */
class NarrowRoofsTest {
    private static final ReadElement ROOF = slab("roof", 0.1, p(0, 0, 3), p(9, 0, 3), p(9, 6, 4), p(0, 6, 4));

    /** Falls to the south before the eave, a little lower. */
    private static ReadElement strip(String id, double width) {
        return slab(id, 0.05, p(0, -1 - width, 2.5), p(9, -1 - width, 2.5), p(9, -1, 2.6), p(0, -1, 2.6));
    }

    @Test
    void a_moulding_before_the_eave_is_no_roof_and_its_element_is_listed_with_the_reason() {
        Roof roof = Roofs.layOut(List.of(ROOF, strip("moulding", 0.25)), List.of(), settings(0.5));

        assertThat(roof.planes())
                .singleElement()
                .satisfies(l -> assertThat(l.plane().name()).isEqualTo("Hall / south plane"));
        assertThat(roof.unplaced()).singleElement().satisfies(u -> {
            assertThat(u.element().element().globalId()).isEqualTo("moulding");
            assertThat(u.reason())
                    .isEqualTo(
                            "narrower than 0.3 m everywhere: a moulding, gutter or fascia; if it is no part of the roof,"
                                    + " exclude it under selectors in runtrue.yaml");
            assertThat(u.counted()).isFalse();
        });
    }

    @Test
    void an_offcut_with_less_upward_face_than_roof_has_is_told_with_its_area_and_is_no_gap() {
        ReadElement offcut = slab("offcut", 0.018, p(2, -5, 2), p(2.129, -5, 2), p(2.129, -4.905, 2), p(2, -4.905, 2));

        Roof roof = Roofs.layOut(List.of(ROOF, offcut), List.of(), settings(0.5));

        assertThat(roof.unplaced()).singleElement().satisfies(u -> {
            assertThat(u.reason()).startsWith("looks upward with 0.012 m2 in all");
            assertThat(u.counted()).isTrue();
        });
    }

    @Test
    void a_surface_in_a_thousand_pieces_is_a_gap_in_the_roof() {
        List<Face> scales = new ArrayList<>();
        for (int i = 0; i < 100; i++) {
            double x = 0.3 * i;
            List<Vector3D> top = List.of(p(x, -5, 2), p(x + 0.2, -5, 2 + 0.01 * (i % 7)), p(x, -4.8, 2.05));
            scales.addAll(RoofFixtures.prism(
                    top, top.stream().map(q -> q.subtract(p(0, 0, 0.01))).toList()));
        }
        Roof roof = Roofs.layOut(List.of(ROOF, RoofFixtures.element("scales", "", scales)), List.of(), settings(0.5));

        assertThat(roof.unplaced()).singleElement().satisfies(u -> {
            assertThat(u.reason())
                    .contains("in no plane of more than 0.05 m2 (100 faces); export it with larger faces");
            assertThat(u.counted()).isFalse();
        });
    }

    @Test
    void a_canopy_wider_than_that_is_roof() {
        Roof roof = Roofs.layOut(List.of(ROOF, strip("canopy", 0.35)), List.of(), settings(0.5));

        assertThat(roof.planes()).hasSize(2);
        assertThat(roof.unplaced()).isEmpty();
    }

    @Test
    void narrow_panels_that_make_one_plane_are_roof() {
        List<ReadElement> panels = List.of(
                slab("left", 0.1, p(0, 0, 3), p(0.2, 0, 3), p(0.2, 6, 4), p(0, 6, 4)),
                slab("right", 0.1, p(0.21, 0, 3), p(0.41, 0, 3), p(0.41, 6, 4), p(0.21, 6, 4)));

        Roof roof = Roofs.layOut(panels, List.of(), settings(0.5));

        assertThat(roof.planes())
                .singleElement()
                .satisfies(l -> assertThat(l.plane().area()).isCloseTo(0.41 * Math.hypot(6, 1), within(1e-6)));
    }
}
