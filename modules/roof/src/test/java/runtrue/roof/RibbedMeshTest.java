package runtrue.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static runtrue.roof.RoofFixtures.p;
import static runtrue.roof.RoofFixtures.settings;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** A sheet with its ribs modelled by faces, as meshes are: 1 m wide, ribs 40 mm high, 6 m along a fall of 1 in 10. */
class RibbedMeshTest {
    private static final double RUN = Math.hypot(6, 0.6);

    /** Section across the sheet: x, and height above the underside of its pans; 1 mm of metal. */
    private static List<double[]> section() {
        List<double[]> below = new ArrayList<>();
        for (int rib = 0; rib < 4; rib++) {
            double x = 0.25 * rib;
            below.add(new double[] {x, 0});
            below.add(new double[] {x + 0.17, 0});
            below.add(new double[] {x + 0.19, 0.04});
            below.add(new double[] {x + 0.23, 0.04});
        }
        below.add(new double[] {1, 0});
        List<double[]> ring = new ArrayList<>(below);
        Collections.reverse(below);
        below.forEach(c -> ring.add(new double[] {c[0], c[1] + 0.001}));
        return ring;
    }

    private static ReadElement sheet() {
        Vector3D up = p(0, 6, 0.6).multiply(1 / RUN);
        Vector3D out = p(0, -0.6, 6).multiply(1 / RUN);
        List<Vector3D> low = section().stream()
                .map(c -> p(c[0], 0, 5).add(out.multiply(c[1])))
                .toList();
        List<Vector3D> high = low.stream().map(c -> c.add(up.multiply(RUN))).toList();
        // Seen against the fall the section runs counter-clockwise: the low end looks down the fall.
        return RoofFixtures.element("sheet", "predefined type ROOFING", RoofFixtures.prism(low, high));
    }

    @Test
    void a_ribbed_sheet_given_by_its_faces_is_one_plane_through_its_pans() {
        Roof roof = Roofs.layOut(List.of(sheet()), List.of(), settings(1));

        assertThat(roof.planes()).singleElement().satisfies(l -> {
            assertThat(Math.tan(l.plane().pitch())).isCloseTo(0.1, within(1e-6));
            assertThat(l.plane().area()).isCloseTo(RUN, within(1e-6));
            assertThat(l.plane().eaveLevel()).isCloseTo(5, within(1e-6));
            assertThat(l.plane().remarks()).anySatisfy(r -> assertThat(r).contains("modelled by its faces"));
        });
    }
}
