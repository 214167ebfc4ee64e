package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;
import static runtrue.roof.RoofFixtures.slab;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CurvedRoofsTest {
    /** A barrel of radius 30 m, 12 m long, in facets of {@code step} degrees to either side of the crown. */
    private static List<ReadElement> barrel(double step, int facets) {
        List<ReadElement> slabs = new ArrayList<>();
        for (int i = -facets; i < facets; i++) {
            double a = Math.toRadians(step * i);
            double b = Math.toRadians(step * (i + 1));
            slabs.add(slab(
                    "facet " + i,
                    0.1,
                    p(0, 30 * Math.sin(a), 30 * Math.cos(a)),
                    p(12, 30 * Math.sin(a), 30 * Math.cos(a)),
                    p(12, 30 * Math.sin(b), 30 * Math.cos(b)),
                    p(0, 30 * Math.sin(b), 30 * Math.cos(b))));
        }
        return slabs;
    }

    @Test
    void facets_of_a_barrel_are_set_aside_with_a_reason_and_give_no_sheets() {
        Roof roof = Roofs.layOut(barrel(2, 8), List.of(), settings(0.5));

        assertThat(roof.planes()).isEmpty();
        assertThat(roof.unplaced())
                .hasSize(16)
                .allSatisfy(u -> assertThat(u.reason())
                        .startsWith("curved roof of 16 facets")
                        .contains("201.1 m2"));
    }

    @Test
    void a_mansard_is_not_taken_for_a_curve() {
        assertThat(Roofs.layOut(barrel(20, 2), List.of(), settings(0.5)).planes())
                .hasSize(4);
    }

    @Test
    void low_gables_in_a_row_are_not_taken_for_a_curve() {
        List<ReadElement> slabs = new ArrayList<>();
        for (int bay = 0; bay < 3; bay++) {
            double y = 20.0 * bay;
            slabs.add(slab("up " + bay, 0.1, p(0, y, 5), p(9, y, 5), p(9, y + 10, 5.6), p(0, y + 10, 5.6)));
            slabs.add(slab("down " + bay, 0.1, p(0, y + 10, 5.6), p(9, y + 10, 5.6), p(9, y + 20, 5), p(0, y + 20, 5)));
        }

        assertThat(Roofs.layOut(slabs, List.of(), settings(0.5)).planes()).hasSize(6);
    }
}
