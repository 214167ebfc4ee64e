package runtrue.roof.skin;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import runtrue.ifc.Element;
import runtrue.roof.ReadElement;
import runtrue.shape.Shape;
import runtrue.shape.Sweep;
import runtrue.shape.Tolerances;

class RibbedSheetTest {
    /** Swept 6 m along y. */
    private static ReadElement swept(List<Vector3D> section) {
        Element element = new Element(
                "id", "hall.ifc", 1, "IfcSlab", "", "", "roof", "", "", "", "", "", "", List.of(), List.of(), Map.of());
        Sweep sweep = new Sweep("", section, Vector3D.of(0, 6, 0));
        return new ReadElement(
                element, "", new Shape.Body(List.of(), true, Optional.of(sweep), "made for a test", List.of()));
    }

    /** A slab 0.1 m thick that sags in an arc of 30 m radius: as many corners as a ribbed sheet, but no pans. */
    @Test
    void a_sagging_slab_is_no_ribbed_sheet() {
        List<Vector3D> section = new ArrayList<>();
        for (int i = -9; i <= 9; i++) {
            double t = Math.toRadians(2 * i);
            section.add(Vector3D.of(30 * Math.sin(t), 0, 30 - 30 * Math.cos(t)));
        }
        for (int i = 9; i >= -9; i--) {
            double t = Math.toRadians(2 * i);
            section.add(Vector3D.of(29.9 * Math.sin(t), 0, 30 - 29.9 * Math.cos(t)));
        }
        assertThat(RibbedSheet.skin(swept(section), Tolerances.standard().angle()))
                .isEmpty();
    }

    /** Two pans of 0.2 m between ribs 0.04 m high, 0.6 mm thick. */
    @Test
    void pans_between_ribs_are() {
        double[][] top = {{0, 0.04}, {0.02, 0}, {0.22, 0}, {0.24, 0.04}, {0.26, 0.04}, {0.28, 0}, {0.48, 0}, {0.5, 0.04}
        };
        List<Vector3D> section = new ArrayList<>();
        for (double[] p : top) {
            section.add(Vector3D.of(p[0], 0, p[1]));
        }
        for (int i = top.length - 1; i >= 0; i--) {
            section.add(Vector3D.of(top[i][0], 0, top[i][1] + 0.0006));
        }
        assertThat(RibbedSheet.skin(swept(section), Tolerances.standard().angle()))
                .hasValueSatisfying(face -> assertThat(face.normal().getZ()).isCloseTo(1, within(1e-9)));
    }
}
